/**
 * Within step 3: what a single measure does to air, moisture and surfaces.
 *
 * <p>In: an assessment and a candidate. Out: a {@link org.drysill.options.MeasureEffect}. The home
 * is one zone in a steady state here; a model of rooms would take the place of {@code SteadyZone}
 * alone.
 */
package org.drysill.options.effect;
