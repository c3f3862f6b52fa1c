/**
 * Beside step 1, layers of built-up elements: how they let heat and vapour through.
 *
 * <p>In: {@code reference/materials}. Out: a {@code MaterialCatalogue}. It may not know any survey.
 */
package org.drysill.reference.materials;
