package org.drysill.options.packs.hours;

/** The vapour outdoors in each sample, half day by half day. */
final class Outdoors {
  private final RingYear year;
  private final double[][] times;

  /** Vapour by hour of the half day [Pa], and the most of its hours. */
  final double[][] vapourPa;

  final double[] moistest;

  /** Means of months. */
  final double[][] mean;

  /**
   * Outdoors.
   *
   * @param times by what the vapour is more than is likely in each month, by sample [1]
   */
  Outdoors(RingYear year, double[][] times) {
    this.year = year;
    this.times = new double[RingYear.MONTHS][times.length];
    this.vapourPa = new double[RingYear.HALF_DAY][times.length];
    this.moistest = new double[times.length];
    this.mean = new double[RingYear.MONTHS][times.length];
    for (int m = 0; m < mean.length; m++) {
      for (int l = 0; l < times.length; l++) {
        this.times[m][l] = times[l][m];
      }
      HourLoops.multiply(year.meanVapourPa[m], this.times[m], mean[m]);
    }
  }

  void fill(int half) {
    double[] by = times[year.month[half]];
    for (int k = 0; k < vapourPa.length; k++) {
      HourLoops.multiply(year.vapourPa[half * RingYear.HALF_DAY + k], by, vapourPa[k]);
    }
    HourLoops.multiply(year.moistest[half], by, moistest);
  }
}
