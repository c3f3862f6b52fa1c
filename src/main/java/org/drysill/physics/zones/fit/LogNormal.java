package org.drysill.physics.zones.fit;

import org.drysill.physics.Bounds;
import org.drysill.physics.Range;

/**
 * A positive quantity that is known within a factor: value = median · exp(spread · z), z normal
 * with mean 0 and deviation 1.
 *
 * @param median the middle, above 0
 * @param spread standard deviation of the logarithm, at least 0
 */
public record LogNormal(double median, double spread) {
  /** From the middle of a normal distribution to the end of the interval that holds 95 % of it. */
  public static final double Z95 = 1.959963984540054;

  /** Refuses what is not positive. */
  public LogNormal {
    Bounds.above("median", median, 0);
    Bounds.atLeast("spread of the logarithm", spread, 0);
  }

  /**
   * Of a range that is taken to hold the value in 95 of 100 cases; the likely value is the median,
   * the spread that of the whole range. A low end of 0 says nothing of the spread; the high end
   * alone does.
   *
   * @param range likely value above 0
   */
  public static LogNormal of(Range range) {
    double up = Math.log(range.high() / range.likely());
    double width = range.low() > 0 ? Math.log(range.high() / range.low()) / 2 : up;
    return new LogNormal(range.likely(), width / Z95);
  }

  /** The value at z. */
  public double at(double z) {
    return median * Math.exp(spread * z);
  }

  /** The interval that holds it in 95 of 100 cases, around the median. */
  public Range range() {
    return new Range(at(-Z95), median, at(Z95));
  }
}
