package org.drysill.reference.measures;

import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.yaml.Key;

/**
 * The default price of a measure; a quote of the user goes before it.
 *
 * @param low lowest usual price of one unit
 * @param likely likely price of one unit
 * @param high highest usual price of one unit
 * @param unit what is counted
 * @param currency currency code
 * @param year price level
 * @param source where it comes from
 */
public record MeasurePrice(
    @Key(about = "Lowest usual price of one unit", min = 0, example = "300") double low,
    @Key(about = "Likely price of one unit", min = 0, example = "450") double likely,
    @Key(about = "Highest usual price of one unit", min = 0, example = "900") double high,
    @Key(about = "What is counted", example = "each") PriceUnit unit,
    @Key(about = "Currency code", example = "GBP") String currency,
    @Key(about = "Price level", example = "2025") int year,
    @Key(about = "Where it comes from") Citation source) {
  /** Refuses prices that do not rise. */
  public MeasurePrice {
    if (low > likely || likely > high) {
      throw new IllegalArgumentException("low, likely and high that rise");
    }
  }

  /** The price as a range. */
  public Range range() {
    return new Range(low, likely, high);
  }
}
