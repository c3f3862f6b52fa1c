package org.drysill.physics.weather;

/**
 * A line through the year, straight between nodes in the middle of neighbouring months; December
 * goes over into January.
 */
final class MonthCourse {
  private static final int MONTHS = 12;
  private static final int PASSES = 120;
  private static final int[] BEFORE = new int[HourlyYear.HOURS];
  private static final double[] SHARE = new double[HourlyYear.HOURS];
  private static final double[][] MEANS = new double[MONTHS][MONTHS];

  static {
    for (int h = 0; h < HourlyYear.HOURS; h++) {
      double month = (h + 0.5) / HourlyYear.HOURS * MONTHS - 0.5;
      int before = (int) Math.floor(month);
      BEFORE[h] = Math.floorMod(before, MONTHS);
      SHARE[h] = month - before;
    }
    for (int h = 0; h < HourlyYear.HOURS; h++) {
      int month = HourlyYear.month(h);
      double hours = HourlyYear.firstHour(month + 1) - HourlyYear.firstHour(month);
      MEANS[month][BEFORE[h]] += (1 - SHARE[h]) / hours;
      MEANS[month][(BEFORE[h] + 1) % MONTHS] += SHARE[h] / hours;
    }
  }

  private MonthCourse() {}

  /** The line at an hour of the year. */
  static double at(double[] nodes, int hour) {
    return (1 - SHARE[hour]) * nodes[BEFORE[hour]]
        + SHARE[hour] * nodes[(BEFORE[hour] + 1) % MONTHS];
  }

  /**
   * The nodes of the line that has the given means. Each pass moves every node by what its month
   * lacks, which leaves less than half of the lack: a month's mean is three quarters its own node.
   */
  static double[] nodes(double[] means) {
    double[] nodes = means.clone();
    for (int pass = 0; pass < PASSES; pass++) {
      double[] now = new double[MONTHS];
      for (int m = 0; m < MONTHS; m++) {
        for (int n = 0; n < MONTHS; n++) {
          now[m] += MEANS[m][n] * nodes[n];
        }
      }
      for (int m = 0; m < MONTHS; m++) {
        nodes[m] += means[m] - now[m];
      }
    }
    return nodes;
  }
}
