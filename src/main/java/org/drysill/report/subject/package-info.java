/**
 * What a report is about, and the desk at which its chapters are written: the results, the words
 * for its readers, the numbers of the workings.
 */
package org.drysill.report.subject;
