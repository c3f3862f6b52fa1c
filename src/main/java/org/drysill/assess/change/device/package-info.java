/**
 * Step 2 of 6, before and after: fans and heat recovery.
 *
 * <p>In: fans and recovery units of two visits. Out: measured held against measured; nothing that
 * is only declared counts as a change.
 */
package org.drysill.assess.change.device;
