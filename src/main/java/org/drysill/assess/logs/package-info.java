/**
 * Step 3 of 6, within the assessment: what the loggers say of the air.
 *
 * <p>In: the logs by bins of time as step 1 reads them, the home, the rules of reading. Out: means
 * by day, week and month of each room against the simultaneous outdoor air, humidity classes, time
 * above limits, the typical day, and an account of each file. It may not know of files, and of what
 * is made of its figures at surfaces or in the balance of moisture.
 */
package org.drysill.assess.logs;
