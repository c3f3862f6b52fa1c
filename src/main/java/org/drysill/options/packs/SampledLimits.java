package org.drysill.options.packs;

import java.util.Arrays;

/**
 * The least multiples of today's likely vapour excess at which a room is at risk, by sample and
 * month.
 */
final class SampledLimits {
  /** At which a wall or corner is at risk of mould. */
  final double[][] mould;

  /** At which a pane is wet. */
  final double[][] wet;

  /** No risk at all. */
  SampledLimits(int samples) {
    mould = none(samples);
    wet = none(samples);
  }

  private static double[][] none(int samples) {
    double[][] none = new double[samples][VapourModel.MONTHS];
    for (double[] months : none) {
      Arrays.fill(months, Double.POSITIVE_INFINITY);
    }
    return none;
  }
}
