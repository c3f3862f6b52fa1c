/**
 * Step 3 of 6: what could be DONE.
 *
 * <p>In: an assessment and the published measures with their prices. Out: what each sensible
 * measure costs, changes and risks, ranked with the reasons. It may not know files, the clock or
 * the wording of the report.
 */
package org.drysill.options;
