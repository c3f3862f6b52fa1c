package org.drysill.physics.tracer.fit;

/**
 * An exponential that was fitted to readings, C(t) = level + amplitude·exp(−rate·t), t from the
 * first reading.
 *
 * <p>The error of the rate has two parts. That of the readings is its own; that of the level is
 * shared by every fit with the same doubt about the level, such as the offset of one sensor, and
 * does not shrink by averaging.
 *
 * @param ratePerHour the rate [1/h]: n of a tracer that nothing stores, n/M of vapour
 * @param readingError standard error [1/h] by the scatter of the readings
 * @param levelError standard error [1/h] by the doubt about the level
 * @param amplitude height above the level at the first reading
 * @param level what it tends to
 * @param levelUncertainty standard uncertainty of the level after the fit
 * @param scatter standard deviation of the readings around the curve
 * @param rSquared share of the variance that the curve explains
 * @param autocorrelation of one residual with the next, at least 0
 * @param effectiveReadings how many independent readings the series is worth
 */
public record FittedExponential(
    double ratePerHour,
    double readingError,
    double levelError,
    double amplitude,
    double level,
    double levelUncertainty,
    double scatter,
    double rSquared,
    double autocorrelation,
    double effectiveReadings) {
  /** Parameters that the readings pay for. */
  private static final int PARAMETERS = 3;

  /** Standard error of the rate [1/h], both parts. */
  public double standardError() {
    return Math.hypot(readingError, levelError);
  }

  /** Degrees of freedom of the scatter, at least 1. */
  public double degreesOfFreedom() {
    return Math.max(1, effectiveReadings - PARAMETERS);
  }
}
