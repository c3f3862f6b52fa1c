package org.drysill.report.page;

import java.util.Optional;
import org.drysill.physics.Range;

/**
 * A bar in a table cell, as shares of the cell's width in per cent: filled to the likely value, a
 * thin line for the range, an upright tick at what is asked.
 *
 * @param likely where the fill ends
 * @param low where the line begins
 * @param spread how long the line is
 * @param required where the tick stands; empty where nothing is asked
 */
public record RangeBar(double likely, double low, double spread, Optional<Double> required) {
  /**
   * A bar on an axis from zero.
   *
   * @param value the value, in the unit of the axis
   * @param required what is asked, in the unit of the axis
   * @param axisEnd the value at the right edge of the cell, above 0
   */
  public static RangeBar of(Range value, Optional<Double> required, double axisEnd) {
    double low = share(value.low(), axisEnd);
    return new RangeBar(
        share(value.likely(), axisEnd),
        low,
        round(share(value.high(), axisEnd) - low),
        required.map(asked -> share(asked, axisEnd)));
  }

  private static double share(double value, double axisEnd) {
    return round(Math.max(0, Math.min(1, value / axisEnd)) * 100);
  }

  private static double round(double percent) {
    return Math.round(percent * 10) / 10.0;
  }
}
