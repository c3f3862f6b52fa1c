package org.drysill.assess.elements;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.physics.layers.Iso13788Element.Verdict;

/**
 * What a year does to a wall.
 *
 * @param likely what becomes of the water at the likely values
 * @param best at the favourable ends of all ranges
 * @param worst at the unfavourable ends of all ranges
 * @param highest the most water within the wall at the end of a month
 * @param left water within it after twelve months
 * @param settling the water that settles in the worst month at the wettest place, where some does
 * @param months twelve months from the first in which water settles
 * @param wet the places at which water settles at the likely values, the wettest first; at the
 *     unfavourable ends where likely none does
 * @param profile temperature and vapour through it in the worst month
 */
public record WallYear(
    Verdict likely,
    Verdict best,
    Verdict worst,
    Figure highest,
    Figure left,
    Optional<Figure> settling,
    List<WaterMonth> months,
    List<WetPlace> wet,
    WallProfile profile) {
  /** Copies the lists. */
  public WallYear {
    months = List.copyOf(months);
    wet = List.copyOf(wet);
  }
}
