package org.drysill.reference.rules;

import java.util.List;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A row of a table of rates by number.
 *
 * @param count the number
 * @param rate the rate
 */
public record RateStep(
    @Key(about = "The number", min = 0, example = "3") int count,
    @Key(
            about = "The rate",
            dimension = Dimension.AIRFLOW,
            unit = "l/s",
            min = 0,
            example = "31 l/s")
        Quantity rate) {
  /** The steps, refused where their numbers do not rise. */
  static List<RateStep> ascending(List<RateStep> steps) {
    for (int i = 1; i < steps.size(); i++) {
      if (steps.get(i).count() <= steps.get(i - 1).count()) {
        throw new IllegalArgumentException(
            "numbers that rise from row to row, but "
                + steps.get(i).count()
                + " follows "
                + steps.get(i - 1).count());
      }
    }
    return List.copyOf(steps);
  }
}
