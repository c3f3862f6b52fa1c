package org.drysill.assess.logs;

import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * The highest moving average of a quantity: the mean of every stretch of a length, weighted by
 * time, of those that readings cover well enough.
 *
 * @param mean the highest mean
 * @param from the first step of its stretch
 * @param coverage share of that stretch with readings [1]
 */
record MovingMeans(double mean, int from, double coverage) {
  /**
   * The highest of a quantity.
   *
   * @param lengthS length of a stretch [s]
   * @param leastCoverage least share of it with readings [1]
   * @return empty where no stretch is covered so well
   */
  static Optional<MovingMeans> highest(
      Trace trace, IntToDoubleFunction quantity, double lengthS, double leastCoverage) {
    int length = (int) Math.round(lengthS / trace.stepS());
    double seconds = 0;
    double sum = 0;
    Optional<MovingMeans> highest = Optional.empty();
    // A stretch may begin before the log or end after it: what it lacks there counts as a gap.
    for (int end = 0; end < trace.size(); end++) {
      seconds += held(trace, quantity, end);
      sum += weighted(trace, quantity, end);
      int gone = end - length;
      if (gone >= 0) {
        seconds -= held(trace, quantity, gone);
        sum -= weighted(trace, quantity, gone);
      }
      double coverage = seconds / lengthS;
      if (seconds > 0 && coverage >= leastCoverage) {
        MovingMeans here = new MovingMeans(sum / seconds, Math.max(0, gone + 1), coverage);
        highest = highest.filter(h -> h.mean() >= here.mean()).or(() -> Optional.of(here));
      }
    }
    return highest;
  }

  private static double held(Trace trace, IntToDoubleFunction quantity, int step) {
    return Double.isNaN(quantity.applyAsDouble(step)) ? 0 : trace.seconds(step);
  }

  private static double weighted(Trace trace, IntToDoubleFunction quantity, int step) {
    double held = held(trace, quantity, step);
    return held > 0 ? held * quantity.applyAsDouble(step) : 0;
  }
}
