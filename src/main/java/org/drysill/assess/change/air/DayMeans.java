package org.drysill.assess.change.air;

import java.util.Map;
import java.util.TreeMap;
import org.drysill.physics.tracer.fit.StudentT;

/**
 * A mean over days, and how far it may be from the mean of many such days. Neighbouring days are
 * alike, so that n days tell no more than n (1 − r)/(1 + r) independent ones (Bayley and Hammersley
 * 1946; memory).
 */
final class DayMeans {
  private static final double DAY_S = 86400;

  /** A day of which less than half is covered has no mean of its own. */
  private static final double LEAST_SHARE = 0.5;

  private final Map<Long, double[]> days = new TreeMap<>();
  private double sum;
  private double seconds;

  /** Adds what held for a time. */
  void add(long epochS, double forSeconds, double value) {
    double[] day = days.computeIfAbsent(Math.floorDiv(epochS, (long) DAY_S), d -> new double[2]);
    day[0] += forSeconds;
    day[1] += forSeconds * value;
    seconds += forSeconds;
    sum += forSeconds * value;
  }

  double mean() {
    return sum / seconds;
  }

  double days() {
    return seconds / DAY_S;
  }

  /**
   * How far the mean may be from that of many such days, by their scatter alone, plus or minus; 0
   * where fewer than two days have a mean.
   *
   * @param level share of cases in which the truth is within
   * @param correlation of neighbouring days, at least 0 and below 1
   */
  double error(double level, double correlation) {
    double[] means =
        days.values().stream()
            .filter(day -> day[0] >= LEAST_SHARE * DAY_S)
            .mapToDouble(day -> day[1] / day[0])
            .toArray();
    if (means.length < 2) {
      return 0;
    }
    double independent = Math.max(2, means.length * (1 - correlation) / (1 + correlation));
    return StudentT.twoSided(level, independent - 1) * Math.sqrt(variance(means) / independent);
  }

  private static double variance(double[] values) {
    double mean = 0;
    for (double value : values) {
      mean += value / values.length;
    }
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    return squares / (values.length - 1);
  }
}
