/**
 * Step 2 of 6, walls: water that settles within built-up elements.
 *
 * <p>In: the home, its indoor vapour, materials, films. Out: an {@code ElementsResult}, wall by
 * wall the year of ISO 13788 clause 6 with its bounds, what would change it, and how far the method
 * reaches. It may not know ventilation, options or the report.
 */
package org.drysill.assess.elements;
