package org.drysill.assess.logs;

import java.util.Arrays;
import org.drysill.survey.log.Channel;
import org.drysill.survey.log.LoggedSeries;

/**
 * One quantity of a log on a grid of time: means weighted by the time for which readings hold. A
 * bin that lies across two steps of the grid gives each its share.
 */
final class Resampled {
  private final double[] means;
  private final double[] seconds;

  private Resampled(double[] means, double[] seconds) {
    this.means = means;
    this.seconds = seconds;
  }

  /** Copies of the means of all steps. */
  double[] means() {
    return means.clone();
  }

  /** Mean of a step; NaN where it is unknown. */
  double mean(int step) {
    return means[step];
  }

  /** Time of a step for which readings hold [s]. */
  double seconds(int step) {
    return seconds[step];
  }

  /** Takes a quantity of a log to a grid. */
  static Resampled of(LoggedSeries series, Channel channel, Grid grid) {
    double[] sums = new double[grid.size()];
    double[] seconds = new double[grid.size()];
    for (int bin = 0; bin < series.size(); bin++) {
      if (channel.isKnown(bin)) {
        add(series, channel, bin, grid, sums, seconds);
      }
    }
    double[] means = new double[grid.size()];
    Arrays.setAll(means, i -> seconds[i] > 0 ? sums[i] / seconds[i] : Double.NaN);
    return new Resampled(means, seconds);
  }

  private static void add(
      LoggedSeries series, Channel channel, int bin, Grid grid, double[] sums, double[] seconds) {
    long from = series.beginEpochS(bin);
    long to = from + series.binSeconds();
    double held = channel.seconds(bin) / series.binSeconds();
    for (int i = grid.clamped(from); i <= grid.clamped(to - 1); i++) {
      long overlap =
          Math.min(to, grid.beginEpochS(i) + grid.stepS()) - Math.max(from, grid.beginEpochS(i));
      if (overlap > 0) {
        seconds[i] += overlap * held;
        sums[i] += overlap * held * channel.mean(bin);
      }
    }
  }
}
