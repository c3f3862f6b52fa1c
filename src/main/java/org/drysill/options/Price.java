package org.drysill.options;

import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;

/**
 * The price of a measure and its standing.
 *
 * @param quoted true for a price that the survey states, false for a default
 * @param each price of one unit [currency]
 * @param count how many units
 * @param unit what is counted, such as {@code m² of window}
 * @param currency the currency
 * @param year the price level, for a default
 * @param source where a default comes from
 */
public record Price(
    boolean quoted,
    Range each,
    double count,
    String unit,
    String currency,
    Optional<Integer> year,
    Optional<Citation> source) {
  /** The words that stand beside every price. */
  public String standing() {
    return quoted ? "your quote" : "default";
  }
}
