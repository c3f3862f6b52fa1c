/**
 * The first page: what was found, what to do in which order, what would change this. Its heading is
 * a sentence made from the verdicts. It fits on one page, whatever the home.
 */
package org.drysill.report.verdict;
