/**
 * Part of step 4: the pages of the edition that is filed as evidence of a remediation: works, who
 * measured with what, what remains.
 *
 * <p>In: the same results as for every edition. Out: neutral words; who answers for what is not
 * known here and not said.
 */
package org.drysill.report.remedy;
