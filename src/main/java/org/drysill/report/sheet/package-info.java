/**
 * Step 4 of 6, the household sheet: one page for the people who live in a home, in a language of
 * theirs. In: what a report is about. Out: a page of that language. Its words stand in resource
 * bundles; it makes them from results, never from sentences of the report.
 */
package org.drysill.report.sheet;
