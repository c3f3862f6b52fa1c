package org.drysill.assess.logs;

import java.util.function.IntToDoubleFunction;

/** A mean weighted by time, built step by step. */
final class Sums {
  private double seconds;
  private double sum;

  /** Adds a value that holds for a while; an unknown one is left out. */
  void add(double value, double forSeconds) {
    if (forSeconds > 0 && !Double.isNaN(value)) {
      seconds += forSeconds;
      sum += value * forSeconds;
    }
  }

  double seconds() {
    return seconds;
  }

  /** The mean; NaN where nothing was added. */
  double mean() {
    return seconds > 0 ? sum / seconds : Double.NaN;
  }

  /** The mean of a quantity over some steps. */
  static Sums over(int from, int to, IntToDoubleFunction quantity, IntToDoubleFunction forSeconds) {
    Sums sums = new Sums();
    for (int i = from; i < to; i++) {
      sums.add(quantity.applyAsDouble(i), forSeconds.applyAsDouble(i));
    }
    return sums;
  }
}
