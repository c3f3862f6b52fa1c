package org.drysill.survey.log;

import java.util.Arrays;

/** What is added up of one quantity, by bin. */
final class BinnedSums {
  private double[] seconds = {};
  private double[] sums = {};
  private double[] lows = {};
  private double[] highs = {};

  void add(int bin, double forSeconds, double value) {
    if (Double.isNaN(value)) {
      return;
    }
    seconds[bin] += forSeconds;
    sums[bin] += forSeconds * value;
    if (value < lows[bin]) {
      lows[bin] = value;
    }
    if (value > highs[bin]) {
      highs[bin] = value;
    }
  }

  /** Makes room for a number of bins, what is there moved up by a shift. */
  void grow(int size, int shift, int used) {
    seconds = moved(seconds, size, shift, used, 0);
    sums = moved(sums, size, shift, used, 0);
    lows = moved(lows, size, shift, used, Double.POSITIVE_INFINITY);
    highs = moved(highs, size, shift, used, Double.NEGATIVE_INFINITY);
  }

  private static double[] moved(double[] from, int size, int shift, int used, double fill) {
    double[] to = new double[size];
    Arrays.fill(to, fill);
    System.arraycopy(from, 0, to, shift, used);
    return to;
  }

  /** Makes one bin of two; the first stands alone where the bins begin within a pair. */
  void mergeNeighbours(int odd, int used) {
    int merged = (odd + used + 1) / 2;
    for (int i = 0; i < merged; i++) {
      int left = 2 * i - odd;
      int right = left + 1;
      boolean hasLeft = left >= 0;
      boolean hasRight = right < used;
      seconds[i] = (hasLeft ? seconds[left] : 0) + (hasRight ? seconds[right] : 0);
      sums[i] = (hasLeft ? sums[left] : 0) + (hasRight ? sums[right] : 0);
      lows[i] =
          Math.min(
              hasLeft ? lows[left] : Double.POSITIVE_INFINITY,
              hasRight ? lows[right] : Double.POSITIVE_INFINITY);
      highs[i] =
          Math.max(
              hasLeft ? highs[left] : Double.NEGATIVE_INFINITY,
              hasRight ? highs[right] : Double.NEGATIVE_INFINITY);
    }
    Arrays.fill(seconds, merged, used, 0);
    Arrays.fill(sums, merged, used, 0);
    Arrays.fill(lows, merged, used, Double.POSITIVE_INFINITY);
    Arrays.fill(highs, merged, used, Double.NEGATIVE_INFINITY);
  }

  Channel channel(int size, int binSeconds) {
    double[] covered = new double[size];
    double[] means = new double[size];
    double[] low = new double[size];
    double[] high = new double[size];
    for (int i = 0; i < size; i++) {
      boolean known = seconds[i] > 0;
      // Where two blocks of a file cover one time, the bin is still no longer than it is.
      covered[i] = Math.min(seconds[i], binSeconds);
      means[i] = known ? sums[i] / seconds[i] : Double.NaN;
      low[i] = known ? lows[i] : Double.NaN;
      high[i] = known ? highs[i] : Double.NaN;
    }
    return new Channel(covered, means, low, high, whole(size));
  }

  /** Seconds, sums and extremes over all bins are those of all readings, however wide the bins. */
  private Channel.Whole whole(int size) {
    double allSeconds = Arrays.stream(seconds, 0, size).sum();
    if (allSeconds == 0) {
      return new Channel.Whole(0, Double.NaN, Double.NaN, Double.NaN);
    }
    return new Channel.Whole(
        allSeconds,
        Arrays.stream(sums, 0, size).sum() / allSeconds,
        Arrays.stream(lows, 0, size).min().orElseThrow(),
        Arrays.stream(highs, 0, size).max().orElseThrow());
  }
}
