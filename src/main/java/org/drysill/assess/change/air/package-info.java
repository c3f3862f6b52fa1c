/**
 * Step 2 of 6, before and after: the air of rooms and of the home.
 *
 * <p>In: readings and logs of two visits. Out: the change of humidity split into its parts, and the
 * change of what is added indoors. It knows nothing of surfaces and devices.
 */
package org.drysill.assess.change.air;
