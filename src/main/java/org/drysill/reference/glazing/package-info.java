/**
 * Beside step 1, kinds of glazing: how well panes, their edges and frames keep heat.
 *
 * <p>In: {@code reference/glazing}. Out: a {@code GlazingCatalogue}. It may not know any survey.
 */
package org.drysill.reference.glazing;
