/**
 * Step 2 of 6, readings: a reading with the error of its instrument, and the one nearest in time.
 *
 * <p>In: what was read and with what. Out: ranges, and pairs of readings that belong together. It
 * may not know what the readings mean.
 */
package org.drysill.assess.readings;
