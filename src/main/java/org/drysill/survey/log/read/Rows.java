package org.drysill.survey.log.read;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Rows in columns: time, values and the line of the file. A value that is not there is NaN. */
final class Rows {
  private static final int FIRST_SIZE = 256;

  long[] ms = new long[FIRST_SIZE];
  double[] celsius = new double[FIRST_SIZE];
  double[] humidity = new double[FIRST_SIZE];
  double[] ppm = new double[FIRST_SIZE];
  long[] line = new long[FIRST_SIZE];
  int size;

  void add(long atMs, double temperature, double relativeHumidity, double co2, long atLine) {
    if (size == ms.length) {
      int more = 2 * size;
      ms = Arrays.copyOf(ms, more);
      celsius = Arrays.copyOf(celsius, more);
      humidity = Arrays.copyOf(humidity, more);
      ppm = Arrays.copyOf(ppm, more);
      line = Arrays.copyOf(line, more);
    }
    ms[size] = atMs;
    celsius[size] = temperature;
    humidity[size] = relativeHumidity;
    ppm[size] = co2;
    line[size] = atLine;
    size++;
  }

  /** Puts the rows from an index on into the order of time; rows of one time stay as they came. */
  void sort(int from) {
    int[] order =
        IntStream.range(from, size)
            .boxed()
            .sorted(Comparator.comparingLong((Integer i) -> ms[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    ms = permuted(ms, order, from);
    line = permuted(line, order, from);
    celsius = permuted(celsius, order, from);
    humidity = permuted(humidity, order, from);
    ppm = permuted(ppm, order, from);
  }

  private static long[] permuted(long[] values, int[] order, int from) {
    long[] sorted = values.clone();
    for (int i = 0; i < order.length; i++) {
      sorted[from + i] = values[order[i]];
    }
    return sorted;
  }

  private static double[] permuted(double[] values, int[] order, int from) {
    double[] sorted = values.clone();
    for (int i = 0; i < order.length; i++) {
      sorted[from + i] = values[order[i]];
    }
    return sorted;
  }

  /** Forgets the first rows. */
  void drop(int count) {
    size -= count;
    System.arraycopy(ms, count, ms, 0, size);
    System.arraycopy(celsius, count, celsius, 0, size);
    System.arraycopy(humidity, count, humidity, 0, size);
    System.arraycopy(ppm, count, ppm, 0, size);
    System.arraycopy(line, count, line, 0, size);
  }
}
