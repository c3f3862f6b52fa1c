/**
 * Within step 3: where in a home a measure could be applied.
 *
 * <p>In: an assessment and the measures as data. Out: candidates, and for every other measure the
 * first condition that does not hold. It knows no measure by name.
 */
package org.drysill.options.site;
