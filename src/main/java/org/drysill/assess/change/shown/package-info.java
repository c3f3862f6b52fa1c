/**
 * Step 2 of 6, before and after: what counts as a change that is shown.
 *
 * <p>In: a difference, its error, and what stands against comparing. Out: fell, rose or not shown,
 * with the criterion and its limit. It knows nothing of what was compared.
 */
package org.drysill.assess.change.shown;
