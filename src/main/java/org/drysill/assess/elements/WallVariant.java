package org.drysill.assess.elements;

import org.drysill.assess.Figure;
import org.drysill.physics.layers.Iso13788Element.Verdict;

/**
 * What a change at a wall would do to its year. A bounded estimate: what is changed is itself taken
 * with a stated range.
 *
 * @param kind what is changed
 * @param changed by how much, as a figure
 * @param likely what becomes of the water at the likely values
 * @param worst at the unfavourable ends of all ranges
 * @param highest the most water within the wall
 * @param left water within it after twelve months
 */
public record WallVariant(
    VariantKind kind, Figure changed, Verdict likely, Verdict worst, Figure highest, Figure left) {}
