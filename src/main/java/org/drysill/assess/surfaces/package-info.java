/**
 * Step 2 of 6, cold surfaces: corners, reveals, windows and built-up walls against the moisture of
 * the indoor air, now and by month.
 *
 * <p>In: the home, its indoor vapour, the tables of glazing, materials and surfaces. Out: a {@code
 * CondensationResult}. It may not know files, the clock or the wording of the report.
 */
package org.drysill.assess.surfaces;
