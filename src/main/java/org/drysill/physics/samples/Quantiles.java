package org.drysill.physics.samples;

import java.util.Arrays;
import org.drysill.physics.Range;

/** The middle of samples and what nine in ten of them lie between. */
public final class Quantiles {
  private static final double LOW = 0.05;
  private static final double MIDDLE = 0.5;
  private static final double HIGH = 0.95;

  private Quantiles() {}

  /** The median with the 5 % and the 95 % quantile, straight between neighbours. */
  public static Range nineInTen(double[] samples) {
    double[] sorted = samples.clone();
    Arrays.sort(sorted);
    return new Range(at(sorted, LOW), at(sorted, MIDDLE), at(sorted, HIGH));
  }

  private static double at(double[] sorted, double share) {
    double place = share * (sorted.length - 1);
    int below = (int) place;
    int above = Math.min(sorted.length - 1, below + 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }
}
