package org.drysill.survey.log.read;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.drysill.survey.log.CycleSamples;
import org.drysill.survey.log.LogFlaw;
import org.drysill.survey.log.LogLimits;
import org.drysill.survey.log.LogQuantity;

/**
 * The rows of a log of cycles, as they are: {@value #MOST} at most, for at one second they span a
 * day and a half and several hundred cycles, and more would tell no more.
 */
final class CycleRows {
  static final int MOST = 1 << 17;

  private static final int FIRST_SIZE = 1 << 12;

  private final LogQuantity[] quantities;
  private final double[][] values;
  private final StepCounts steps = new StepCounts();
  private long[] ms = new long[FIRST_SIZE];
  private long[] lines = new long[FIRST_SIZE];
  private int size;
  private double gapS;

  CycleRows(Iterable<LogQuantity> quantities) {
    java.util.List<LogQuantity> all = new java.util.ArrayList<>();
    quantities.forEach(all::add);
    this.quantities = all.toArray(new LogQuantity[0]);
    this.values = new double[all.size()][FIRST_SIZE];
  }

  /** False where there is no room for another row. */
  boolean add(long atMs, double[] row, long line) {
    if (size == MOST) {
      return false;
    }
    if (size == ms.length) {
      ms = Arrays.copyOf(ms, 2 * size);
      lines = Arrays.copyOf(lines, 2 * size);
      for (int i = 0; i < values.length; i++) {
        values[i] = Arrays.copyOf(values[i], 2 * size);
      }
    }
    ms[size] = atMs;
    lines[size] = line;
    for (int i = 0; i < values.length; i++) {
      values[i][size] = row[i];
    }
    size++;
    return true;
  }

  int size() {
    return size;
  }

  long firstMs() {
    return ms[0];
  }

  long lastMs() {
    return ms[size - 1];
  }

  /** The median step [s]. */
  double medianStepS() {
    return steps.median() / 1000;
  }

  /** Time within gaps [s]. */
  double gapS() {
    return gapS;
  }

  /** Puts rows into the order of time, and notes what is odd between neighbours. */
  void settle(LogLimits limits, Notes notes) {
    keep(
        IntStream.range(0, size)
            .boxed()
            .sorted(Comparator.comparingLong((Integer i) -> ms[i]))
            .mapToInt(i -> i)
            .toArray());
    keep(IntStream.range(0, size).filter(i -> i + 1 == size || !isRepeated(i, notes)).toArray());
    for (int i = 1; i < size; i++) {
      steps.add(ms[i] - ms[i - 1]);
    }
    for (int i = 1; i + 1 < size; i++) {
      removeSpikes(i, limits, notes);
    }
    double longest = limits.holdSteps() * steps.median();
    for (int i = 1; i < size; i++) {
      double step = ms[i] - ms[i - 1];
      if (step > longest) {
        double missing = (step - longest) / 1000;
        gapS += missing;
        notes.add(LogFlaw.GAP, lines[i], missing);
      }
    }
  }

  private boolean isRepeated(int i, Notes notes) {
    if (ms[i] != ms[i + 1]) {
      return false;
    }
    notes.add(LogFlaw.DUPLICATE_TIME, lines[i + 1]);
    return true;
  }

  private void removeSpikes(int i, LogLimits limits, Notes notes) {
    double limit = limits.spikeKelvin();
    for (int k = 0; k < values.length; k++) {
      double up = values[k][i] - values[k][i - 1];
      double down = values[k][i] - values[k][i + 1];
      boolean far = Math.abs(up) > limit && Math.abs(down) > limit;
      boolean temperature = quantities[k] != LogQuantity.FLOW;
      if (temperature && far && Math.abs(up - down) < limit / 2) {
        values[k][i] = Double.NaN;
        notes.add(LogFlaw.SPIKE, quantities[k], lines[i]);
      }
    }
  }

  private void keep(int[] order) {
    ms = Arrays.stream(order).mapToLong(i -> ms[i]).toArray();
    lines = Arrays.stream(order).mapToLong(i -> lines[i]).toArray();
    for (int k = 0; k < values.length; k++) {
      double[] column = values[k];
      values[k] = Arrays.stream(order).mapToDouble(i -> column[i]).toArray();
    }
    size = order.length;
  }

  CycleSamples samples() {
    Map<LogQuantity, double[]> columns = new EnumMap<>(LogQuantity.class);
    for (int k = 0; k < values.length; k++) {
      columns.put(quantities[k], Arrays.copyOf(values[k], size));
    }
    return new CycleSamples(Arrays.copyOf(ms, size), columns);
  }
}
