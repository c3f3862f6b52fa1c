package org.drysill.reference.rules;

import java.util.List;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A row of a table of rates by floor area and number of bedrooms.
 *
 * @param above the floor area that a home must exceed for the row to hold
 * @param steps the rates by number of bedrooms
 */
public record FloorStep(
    @Key(
            about = "The floor area that a home must exceed for the row to hold",
            dimension = Dimension.AREA,
            unit = "m2",
            min = 0,
            example = "1500 ft2")
        Quantity above,
    @Key(about = "The rates by number of bedrooms", required = true) List<RateStep> steps) {
  /** Refuses steps out of order. */
  public FloorStep {
    steps = RateStep.ascending(steps);
  }

  /** The rows, refused where their floor areas do not rise. */
  static List<FloorStep> ascending(List<FloorStep> rows) {
    for (int i = 1; i < rows.size(); i++) {
      if (rows.get(i).above().value() <= rows.get(i - 1).above().value()) {
        throw new IllegalArgumentException(
            "floor areas that rise from row to row, but "
                + rows.get(i).above().written()
                + " follows "
                + rows.get(i - 1).above().written());
      }
    }
    return List.copyOf(rows);
  }
}
