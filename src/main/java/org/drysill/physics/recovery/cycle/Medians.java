package org.drysill.physics.recovery.cycle;

import java.util.Arrays;

/** Medians, which a few wild values do not move. */
final class Medians {
  /** Makes the median absolute deviation of a normal distribution its standard deviation. */
  private static final double TO_DEVIATION = 1.4826;

  private Medians() {}

  /** The median of at least one value. */
  static double of(double[] values) {
    return share(values, 0.5);
  }

  /** The value below which a share of all lies. */
  static double share(double[] values, double share) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.round(share * (sorted.length - 1))];
  }

  /** The deviation around a centre, by the median of the distances from it. */
  static double deviation(double[] values, double centre) {
    return TO_DEVIATION * of(Arrays.stream(values).map(v -> Math.abs(v - centre)).toArray());
  }
}
