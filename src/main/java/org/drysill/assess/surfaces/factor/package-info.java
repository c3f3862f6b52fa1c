/**
 * Step 2 of 6, cold surfaces: the temperature factor of a place, from the best that the survey
 * gives: readings, a stated factor, a thermal transmittance, glazing, layers, typical details.
 *
 * <p>In: what was seen of the place. Out: a {@code TemperatureFactor}. It may not know months.
 */
package org.drysill.assess.surfaces.factor;
