package org.drysill.physics.energy;

import java.util.OptionalDouble;
import org.drysill.physics.Bounds;

/**
 * Simple payback, EN 15459-1:2017 (memory): extra first cost by yearly saving, both against the
 * same alternative. It knows neither discounting nor life, and says nothing about a measure whose
 * purpose is not to save.
 */
public final class Payback {
  private Payback() {}

  /**
   * Years until the savings have paid the extra first cost.
   *
   * @param extraFirstCost first cost above that of the alternative; 0 or less is paid at once
   * @param yearlySaving yearly saving against the alternative
   * @return empty where it is never paid: a first cost and no saving
   */
  public static OptionalDouble years(double extraFirstCost, double yearlySaving) {
    Bounds.finite("extra first cost", extraFirstCost);
    Bounds.finite("yearly saving", yearlySaving);
    if (extraFirstCost <= 0) {
      return OptionalDouble.of(0);
    }
    double years = extraFirstCost / yearlySaving;
    return yearlySaving > 0 && Double.isFinite(years)
        ? OptionalDouble.of(years)
        : OptionalDouble.empty();
  }
}
