/**
 * Step 2 of 6, before and after: cold places and mould.
 *
 * <p>In: the places that both visits looked at. Out: each at the same outdoor and room air, and the
 * areas with mould.
 */
package org.drysill.assess.change.place;
