/**
 * Step 2 of 6, heat recovery in use: what the temperatures taken at a unit say, against what its
 * maker declares.
 *
 * <p>In: the home with its fans and tests. Out: a {@code HeatRecoveryResult}. It may not know
 * files, the clock or prices.
 */
package org.drysill.assess.recovery;
