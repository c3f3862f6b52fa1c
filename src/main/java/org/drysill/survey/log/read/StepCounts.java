package org.drysill.survey.log.read;

/**
 * The times between neighbouring rows, counted in classes that are 1 % wide, so that their median
 * takes no more memory for more rows. The mean of its class stands for the median: exact where a
 * log keeps its step.
 */
final class StepCounts {
  private static final double WIDTH = Math.log(1.01);
  private static final int CLASSES = 2400;

  private final long[] counts = new long[CLASSES];
  private final double[] sums = new double[CLASSES];
  private long all;
  private long lastStep = -1;
  private int lastClass;

  /** Counts a step [ms], at least 1. */
  void add(long step) {
    if (step != lastStep) {
      lastStep = step;
      lastClass = (int) Math.min(CLASSES - 1, Math.log((double) step) / WIDTH);
    }
    counts[lastClass]++;
    sums[lastClass] += step;
    all++;
  }

  /** The median step [ms]; 0 before the first. */
  double median() {
    long below = 0;
    for (int i = 0; i < CLASSES; i++) {
      below += counts[i];
      if (counts[i] > 0 && 2 * below >= all) {
        return sums[i] / counts[i];
      }
    }
    return 0;
  }
}
