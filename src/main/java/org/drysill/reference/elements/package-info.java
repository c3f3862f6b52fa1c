/**
 * Beside step 1, water within built-up elements: what counts as insulation or tight, and how much
 * water is too much.
 *
 * <p>In: {@code reference/defaults/elements.yaml}. Out: {@code ElementDefaults}. It may not know
 * any survey.
 */
package org.drysill.reference.elements;
