/**
 * Step 5 of 6, what every page of another language is written with: phrases from the bundles of a
 * language, names of rooms, fans and places, numbers with the marks and units of a language.
 *
 * <p>In: figures and the survey. Out: words. No phrase is made from a sentence of the report.
 */
package org.drysill.report.language;
