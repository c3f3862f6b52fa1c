/**
 * Part of step 4 of 6: before and after on equal terms, as rows that the report prints as a table
 * and the terminal as lines.
 *
 * <p>In: two visits compared. Out: words and rounded numbers, with what is shown. It may not
 * compute anything.
 */
package org.drysill.report.compared;
