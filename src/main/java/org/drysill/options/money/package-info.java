/**
 * Within step 3: what measures and fans cost and save.
 *
 * <p>In: measures with their effect, prices of the survey and published defaults. Out: {@link
 * org.drysill.options.MeasureMoney} and the running cost of the fans that are there. Money stays in
 * the survey's currency; nothing is converted.
 */
package org.drysill.options.money;
