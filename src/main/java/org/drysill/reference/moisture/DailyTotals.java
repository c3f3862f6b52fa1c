package org.drysill.reference.moisture;

import java.util.List;
import org.drysill.reference.Citation;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * Published totals of a household, for comparison with the list of its sources.
 *
 * @param occupancy how moist the household lives, in the words of the document
 * @param perDay water a day by number of occupants, one first [kg]
 * @param source where it is printed
 */
public record DailyTotals(
    @Key(about = "How moist the household lives", example = "moist") String occupancy,
    @Key(about = "Water a day in kg by number of occupants, one first", min = 0, required = true)
        List<Quantity> perDay,
    @Key(about = "Where it is printed") Citation source) {
  /** Copies the list. */
  public DailyTotals {
    perDay = List.copyOf(perDay);
  }
}
