package org.drysill.physics.tracer.balance;

import java.util.List;
import org.drysill.physics.Bounds;
import org.drysill.physics.tracer.Gaps;
import org.drysill.physics.tracer.Gaps.Part;
import org.drysill.physics.tracer.TracerSeries;

/**
 * The mean excess of a period, weighted by time: straight lines between readings, and nothing
 * across gaps.
 *
 * @param excess mean excess, in the unit of the series
 * @param uncertainty its standard uncertainty: offsets do not average out, so that it is theirs
 * @param spanDays from the first to the last reading [d]
 * @param coveredDays the same without gaps [d]
 */
public record PeriodMean(double excess, double uncertainty, double spanDays, double coveredDays) {
  private static final double HOURS_A_DAY = 24;

  /** Refuses a period that ends before it begins. */
  public PeriodMean {
    Bounds.finite("mean excess", excess);
    Bounds.atLeast("uncertainty of the mean excess", uncertainty, 0);
    Bounds.inside("covered time [d]", coveredDays, 0, spanDays);
  }

  /**
   * The mean of a series.
   *
   * @param offsetUncertainty standard uncertainty that all readings share
   * @param longestGapHours readings further apart than this leave a gap [h]
   * @throws IllegalArgumentException where no two readings lie close enough
   */
  public static PeriodMean of(
      TracerSeries series, double offsetUncertainty, double longestGapHours) {
    List<Part> parts = Gaps.between(series.hours(), longestGapHours);
    double sum = 0;
    double covered = 0;
    for (Part part : parts) {
      for (int i = part.from() + 1; i <= part.to(); i++) {
        double step = series.hour(i) - series.hour(i - 1);
        sum += step * (series.excess(i) + series.excess(i - 1)) / 2;
        covered += step;
      }
    }
    Bounds.above("time between readings [h]", covered, 0);
    double span = series.hour(series.size() - 1) - series.hour(0);
    return new PeriodMean(
        sum / covered,
        offsetUncertainty,
        span / HOURS_A_DAY,
        Math.min(span, covered) / HOURS_A_DAY);
  }

  /** Share of the period that readings cover. */
  public double coverage() {
    return spanDays > 0 ? coveredDays / spanDays : 0;
  }
}
