package org.drysill.assess.elements;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;

/**
 * A layer of a wall as heat and vapour meet it.
 *
 * @param name its material, in words that can follow "the"
 * @param kind what it is for
 * @param thicknessM thickness [m], where it was given
 * @param resistance thermal resistance R [m²·K/W]
 * @param airLayer vapour-equivalent thickness of still air sd [m]
 * @param absorbing true where it takes up water
 * @param table where its figures come from, unless they are all the maker's own
 */
public record WallLayer(
    String name,
    LayerKind kind,
    Optional<Range> thicknessM,
    Figure resistance,
    Figure airLayer,
    boolean absorbing,
    Optional<Citation> table) {
  WallLayer named(String other) {
    return new WallLayer(other, kind, thicknessM, resistance, airLayer, absorbing, table);
  }
}
