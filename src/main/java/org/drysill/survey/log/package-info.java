/**
 * Within step 1: what a log of readings holds.
 *
 * <p>In: readings in the order of time, from {@link org.drysill.survey.log.read}. Out: {@link
 * org.drysill.survey.log.Logs}, each with its air by bins of time in memory that does not grow with
 * the number of rows, and with what is odd about the file, counted and with lines. What the air
 * means is no business of it; vapour is reckoned here, row by row, because the vapour of a mean is
 * not the mean of the vapour.
 */
package org.drysill.survey.log;
