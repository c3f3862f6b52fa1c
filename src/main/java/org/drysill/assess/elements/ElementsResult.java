package org.drysill.assess.elements;

import java.util.List;
import org.drysill.assess.Assumption;
import org.drysill.assess.Finding;

/**
 * Water within all built-up walls whose layers are known.
 *
 * @param walls in the order of the survey
 * @param assumptions what was taken for granted
 */
public record ElementsResult(List<WallWithin> walls, List<Assumption> assumptions) {
  /** Copies the lists. */
  public ElementsResult {
    walls = List.copyOf(walls);
    assumptions = List.copyOf(assumptions);
  }

  /** All findings, wall by wall. */
  public List<Finding> findings() {
    return walls.stream().flatMap(w -> w.findings().stream()).toList();
  }
}
