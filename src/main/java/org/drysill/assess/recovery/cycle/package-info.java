/**
 * Within step 2 of 6, heat recovery in use: what a log of temperatures through the cycles of an
 * alternating unit says.
 *
 * <p>In: the log as it was read, the readings noted beside it, the errors of instruments. Out:
 * {@code LoggedCycles}, ratios on both sides with their errors, how the unit turns, and why they
 * are weak or missing. It may not know files, the clock or prices.
 */
package org.drysill.assess.recovery.cycle;
