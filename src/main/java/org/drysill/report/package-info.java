/**
 * Step 4 of 6: what is SAID.
 *
 * <p>In: an assessment and the options. Out: a view of finished words and numbers, and from it the
 * PDF, the HTML page and the results file. It computes no physics and judges nothing.
 */
package org.drysill.report;
