/**
 * Step 2 of 6, before and after: the two visits themselves.
 *
 * <p>In: two surveys and what was found at each. Out: whether they are of one home, what was done
 * in between, and which comparisons came out otherwise.
 */
package org.drysill.assess.change.visit;
