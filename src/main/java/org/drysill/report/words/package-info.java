/**
 * How values are put into words: numbers in the units that the reader is used to, rounded so that
 * no comparison is flattered, dates, lists and plurals.
 *
 * <p>In: ranges with the unit in which they are kept. Out: finished text. It knows no survey.
 */
package org.drysill.report.words;
