/**
 * Part of step 4: the pages of the edition that an owner keeps: what the house is made of, what
 * changed, what stands behind it.
 *
 * <p>In: the same results as for every edition. Out: plain words and one page of facts.
 */
package org.drysill.report.household;
