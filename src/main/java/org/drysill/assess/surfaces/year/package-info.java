/**
 * Part of step 2 of 6: surfaces hour by hour over a year.
 *
 * <p>In: the outdoor hours, the indoor vapour by outdoor temperature, temperature factors. Out: how
 * long a surface is moist or wet, how far mould may grow on it, how much water settles on a pane.
 * It may not know the survey's places.
 */
package org.drysill.assess.surfaces.year;
