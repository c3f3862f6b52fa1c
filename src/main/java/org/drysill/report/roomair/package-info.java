/**
 * Part of step 4 of 6: the way of air from room to room, as a sketch of the home and as a table.
 *
 * <p>In: the rooms in balance. Out: blocks of the ventilation chapter. It may not compute anything.
 */
package org.drysill.report.roomair;
