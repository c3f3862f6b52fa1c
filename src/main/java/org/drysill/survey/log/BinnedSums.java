package org.drysill.survey.log;

import java.util.Arrays;

/**
 * What is added up of one quantity, by bin. The four numbers of a bin stand side by side, so that a
 * reading touches one place of memory and not four.
 */
final class BinnedSums {
  private static final int SECONDS = 0;
  private static final int SUM = 1;
  private static final int LOW = 2;
  private static final int HIGH = 3;
  private static final int CELL = 4;

  private double[] cells = {};

  void add(int bin, double forSeconds, double value) {
    if (Double.isNaN(value)) {
      return;
    }
    int at = bin * CELL;
    cells[at + SECONDS] += forSeconds;
    cells[at + SUM] += forSeconds * value;
    if (value < cells[at + LOW]) {
      cells[at + LOW] = value;
    }
    if (value > cells[at + HIGH]) {
      cells[at + HIGH] = value;
    }
  }

  /** Makes room for a number of bins, what is there moved up by a shift. */
  void grow(int size, int shift, int used) {
    double[] more = new double[size * CELL];
    for (int bin = 0; bin < size; bin++) {
      clear(more, bin);
    }
    System.arraycopy(cells, 0, more, shift * CELL, used * CELL);
    cells = more;
  }

  private static void clear(double[] cells, int bin) {
    cells[bin * CELL + SECONDS] = 0;
    cells[bin * CELL + SUM] = 0;
    cells[bin * CELL + LOW] = Double.POSITIVE_INFINITY;
    cells[bin * CELL + HIGH] = Double.NEGATIVE_INFINITY;
  }

  /** Makes one bin of two; the first stands alone where the bins begin within a pair. */
  void mergeNeighbours(int odd, int used) {
    double[] before = Arrays.copyOf(cells, used * CELL);
    for (int bin = 0; bin < used; bin++) {
      clear(cells, bin);
    }
    for (int bin = 0; bin < used; bin++) {
      int from = bin * CELL;
      int to = (bin + odd) / 2 * CELL;
      cells[to + SECONDS] += before[from + SECONDS];
      cells[to + SUM] += before[from + SUM];
      cells[to + LOW] = Math.min(cells[to + LOW], before[from + LOW]);
      cells[to + HIGH] = Math.max(cells[to + HIGH], before[from + HIGH]);
    }
  }

  Channel channel(int size, int binSeconds) {
    double[] covered = new double[size];
    double[] means = new double[size];
    double[] low = new double[size];
    double[] high = new double[size];
    double seconds = 0;
    double sum = 0;
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (int bin = 0; bin < size; bin++) {
      int at = bin * CELL;
      boolean known = cells[at + SECONDS] > 0;
      // Where two blocks of a file cover one time, the bin is still no longer than it is.
      covered[bin] = Math.min(cells[at + SECONDS], binSeconds);
      means[bin] = known ? cells[at + SUM] / cells[at + SECONDS] : Double.NaN;
      low[bin] = known ? cells[at + LOW] : Double.NaN;
      high[bin] = known ? cells[at + HIGH] : Double.NaN;
      seconds += cells[at + SECONDS];
      sum += cells[at + SUM];
      lowest = Math.min(lowest, cells[at + LOW]);
      highest = Math.max(highest, cells[at + HIGH]);
    }
    // Seconds, sums and extremes over all bins are those of all readings, however wide the bins.
    Channel.Whole whole =
        seconds > 0
            ? new Channel.Whole(seconds, sum / seconds, lowest, highest)
            : new Channel.Whole(0, Double.NaN, Double.NaN, Double.NaN);
    return new Channel(covered, means, low, high, whole);
  }
}
