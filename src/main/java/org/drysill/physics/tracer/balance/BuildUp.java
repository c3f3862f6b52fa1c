package org.drysill.physics.tracer.balance;

import org.drysill.physics.Bounds;
import org.drysill.physics.Range;
import org.drysill.physics.tracer.TracerSeries;
import org.drysill.physics.tracer.fit.ExponentialFit;
import org.drysill.physics.tracer.fit.FittedExponential;
import org.drysill.physics.tracer.fit.Prior;

/**
 * The build-up of CO₂ during a night with a known number of sleepers, from the balance of one
 * well-mixed room. Indicative: doors, sleepers who come and go and what they give off decide.
 *
 * <pre>
 * C(t) − Cb = S·(1 − e^(−n·t)) + (C0 − Cb)·e^(−n·t),   S = G/q,   n = q/V
 * </pre>
 *
 * <p>C concentration and Cb that of outdoor air [ratio], S the steady excess that it tends to, G
 * what the sleepers give off [m³/s], q flow [m³/s], V volume [m³], n [1/h], t [h].
 *
 * <p>The end of the curve gives q by G/S, its bend gives n without G: two answers that must agree
 * within their errors, or the room is not one zone or the sleepers are not those that were stated.
 *
 * @param steadyExcess S with its interval [ratio]
 * @param flowM3S q = G/S [m³/s]
 * @param bendPerHour n of the bend with its interval [1/h]
 * @param agree whether q/V lies within the interval of the bend somewhere
 */
public record BuildUp(Range steadyExcess, Range flowM3S, Range bendPerHour, boolean agree) {
  private static final double SECONDS_AN_HOUR = 3600;
  private static final int LEAST_READINGS = 8;

  /** What came of a night. */
  public sealed interface Outcome {
    /** It bends far enough towards its end for the end to be told. */
    record Read(BuildUp buildUp) implements Outcome {}

    /**
     * It does not.
     *
     * @param relativeError standard error of the steady excess over it; NaN where nothing fits
     * @param allowed the most that is believed
     */
    record Unread(double relativeError, double allowed) implements Outcome {}
  }

  /**
   * Reads a night.
   *
   * @param night readings of the hours in which the same people sleep there, ppm or ratio alike,
   *     excess as ratio
   * @param offset standard uncertainty that all readings share [ratio]
   * @param emissionM3S G
   * @param volumeM3 V
   * @param coverageFactor how many standard errors an interval takes to each side
   * @param worstError largest standard error of the steady excess, as a share of it
   */
  public static Outcome of(
      TracerSeries night,
      double offset,
      Range emissionM3S,
      Range volumeM3,
      double coverageFactor,
      double worstError) {
    Bounds.atLeast("number of readings", night.size(), LEAST_READINGS);
    FittedExponential fit =
        ExponentialFit.anywhere(night.hours(), night.excesses(), night.weights(), Prior.UNKNOWN);
    double uncertainty = Math.hypot(fit.levelUncertainty(), offset);
    double error = uncertainty / fit.level();
    if (!(fit.ratePerHour() > 0
        && fit.level() > coverageFactor * uncertainty
        && error <= worstError)) {
      return new Outcome.Unread(error, worstError);
    }
    Range steady = Range.around(fit.level(), coverageFactor * uncertainty);
    double half = coverageFactor * fit.standardError();
    Range bend =
        new Range(
            Math.max(0, fit.ratePerHour() - half), fit.ratePerHour(), fit.ratePerHour() + half);
    Range flow = emissionM3S.dividedBy(steady);
    Range airChange = flow.dividedBy(volumeM3).times(SECONDS_AN_HOUR);
    boolean agree = airChange.low() <= bend.high() && bend.low() <= airChange.high();
    return new Outcome.Read(new BuildUp(steady, flow, bend, agree));
  }
}
