package org.drysill.physics.layers;

import org.drysill.physics.Bounds;

/**
 * The air on both sides of an element in one month.
 *
 * @param indoorCelsius Ti [°C]
 * @param indoorPa pi, vapour pressure [Pa]
 * @param outdoorCelsius Te [°C]
 * @param outdoorPa pe, vapour pressure [Pa]
 * @param days length of the month [d]
 */
public record MonthClimate(
    double indoorCelsius, double indoorPa, double outdoorCelsius, double outdoorPa, double days) {
  private static final double SECONDS_PER_DAY = 86_400;

  /** Refuses negative pressures and no time. */
  public MonthClimate {
    Bounds.atLeast("indoor vapour pressure [Pa]", indoorPa, 0);
    Bounds.atLeast("outdoor vapour pressure [Pa]", outdoorPa, 0);
    Bounds.above("days", days, 0);
  }

  /** Length of the month [s]. */
  double seconds() {
    return days * SECONDS_PER_DAY;
  }
}
