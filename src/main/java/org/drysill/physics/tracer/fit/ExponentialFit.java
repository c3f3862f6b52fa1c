package org.drysill.physics.tracer.fit;

import org.drysill.physics.Bounds;

/**
 * Nonlinear least squares of a single exponential whose final level is known within an uncertainty,
 * the decay analysis of ASTM E741-11 and ISO 12569:2017 (memory) with the background as a parameter
 * that has a prior.
 *
 * <pre>
 * C(t) = b + a·exp(−λ·t)
 * minimise Σ w·(C − C(t))² / (s²·f) + ((b − b0) / ub)²
 * f = (1 + ρ) / (1 − ρ)
 * </pre>
 *
 * <p>λ rate [1/h], t [h], b0 and ub the prior of the level, w weights, s the scatter found, ρ the
 * correlation of neighbouring residuals and f by how much it reduces the number of independent
 * readings (Bayley and Hammersley 1946, memory). Steps by Levenberg and Marquardt. With C the
 * covariance of the parameters the prior contributes C(λ,b)/ub to the error of λ and the readings
 * the rest; that division is exact for the linearised problem.
 */
public final class ExponentialFit {
  /** A level known exactly keeps this share of the amplitude as uncertainty, for the algebra. */
  private static final double EXACT = 1e-7;

  /** Perfect readings keep this share of the amplitude as scatter, for the algebra. */
  private static final double PERFECT = 1e-9;

  private static final int LEAST_READINGS = 4;
  private static final double[] RATES_TO_TRY = {0.03, 0.1, 0.3, 1, 3, 10};

  private final double[] hours;
  private final double[] values;
  private final double[] weights;
  private final Prior level;
  private final double scale;

  private ExponentialFit(double[] hours, double[] values, double[] weights, Prior level) {
    this.hours = hours;
    this.values = values;
    this.weights = weights;
    this.level = level;
    this.scale = span(values);
  }

  /**
   * Fits from the log-linear regression, with the level at its likely value, on.
   *
   * @param hours times [h], at least 4
   * @param values concentrations, all above the likely level
   * @param weights of the readings, above 0
   * @param level the level with a finite uncertainty
   */
  public static FittedExponential decay(
      double[] hours, double[] values, double[] weights, Prior level) {
    return new ExponentialFit(hours, values, weights, level)
        .from(LogLinear.rate(hours, values, weights, level.value()));
  }

  /**
   * Fits a curve of which neither level nor direction is known, from several rates on; the best
   * stays.
   */
  public static FittedExponential anywhere(
      double[] hours, double[] values, double[] weights, Prior level) {
    ExponentialFit fit = new ExponentialFit(hours, values, weights, level);
    FittedExponential best = fit.from(RATES_TO_TRY[0]);
    for (double rate : RATES_TO_TRY) {
      FittedExponential other = fit.from(rate);
      best = other.scatter() < best.scatter() ? other : best;
    }
    return best;
  }

  private FittedExponential from(double rate) {
    Bounds.atLeast("number of readings", hours.length, LEAST_READINGS);
    double variance = scale * scale * 1e-4;
    double last = values[values.length - 1];
    double base = Double.isInfinite(level.uncertainty()) ? last : level.value();
    double[] p = {values[0] - base, rate, base};
    Residuals residuals = residuals(p);
    for (int round = 0; round < 4; round++) {
      p = refined(p, variance);
      residuals = residuals(p);
      variance = Math.max(residuals.variance(), square(PERFECT * scale)) * residuals.inflation();
    }
    return fitted(p, residuals, equations(p, variance).covariance());
  }

  private FittedExponential fitted(double[] p, Residuals residuals, double[][] covariance) {
    double shared = covariance[1][2] / levelUncertainty();
    return new FittedExponential(
        p[1],
        Math.sqrt(Math.max(0, covariance[1][1] - shared * shared)),
        Math.abs(shared),
        p[0],
        p[2],
        Math.sqrt(covariance[2][2]),
        Math.sqrt(residuals.variance()),
        residuals.rSquared(values),
        residuals.autocorrelation(),
        hours.length / residuals.inflation());
  }

  private double[] refined(double[] start, double variance) {
    double[] p = start;
    double damping = 1e-3;
    for (int i = 0; i < 100 && damping < 1e12; i++) {
      double[] step = equations(p, variance).step(damping);
      double[] next = {p[0] + step[0], p[1] + step[1], p[2] + step[2]};
      if (cost(next, variance) <= cost(p, variance)) {
        p = next;
        damping /= 10;
        if (Math.abs(step[1]) <= 1e-12 * Math.abs(p[1])) {
          break;
        }
      } else {
        damping *= 10;
      }
    }
    return p;
  }

  private NormalEquations equations(double[] p, double variance) {
    NormalEquations equations = new NormalEquations();
    for (int i = 0; i < hours.length; i++) {
      double t = hours[i] - hours[0];
      double decayed = Math.exp(-p[1] * t);
      double[] gradient = {decayed, -p[0] * t * decayed, 1};
      equations.add(gradient, values[i] - p[2] - p[0] * decayed, weights[i] / variance);
    }
    equations.add(new double[] {0, 0, 1}, level.value() - p[2], 1 / square(levelUncertainty()));
    return equations;
  }

  private double cost(double[] p, double variance) {
    return residuals(p).sumOfSquares() / variance
        + square((p[2] - level.value()) / levelUncertainty());
  }

  private Residuals residuals(double[] p) {
    double[] residuals = new double[hours.length];
    for (int i = 0; i < hours.length; i++) {
      residuals[i] = values[i] - p[2] - p[0] * Math.exp(-p[1] * (hours[i] - hours[0]));
    }
    return new Residuals(residuals, weights);
  }

  private double levelUncertainty() {
    return Math.max(level.uncertainty(), EXACT * scale);
  }

  private static double span(double[] values) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    return Bounds.above("span of the readings", high - low, 0);
  }

  private static double square(double x) {
    return x * x;
  }
}
