/**
 * Step 2 of 6, cold surfaces: a temperature factor carried through the twelve months.
 *
 * <p>In: a factor, the climate, the indoor temperature and vapour. Out: a {@code MonthTable}. It
 * may not know where the factor comes from.
 */
package org.drysill.assess.surfaces.months;
