/**
 * Step 5 of 6, the short report: the results on some ten pages, in a language of their reader.
 *
 * <p>In: what a report is about. Out: sections whose every word stands in a resource bundle. It
 * takes ids, figures and findings and never a sentence of the long report; names that the survey
 * gives and titles of documents stay as they are.
 */
package org.drysill.report.brief;
