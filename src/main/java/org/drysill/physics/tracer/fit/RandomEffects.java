package org.drysill.physics.tracer.fit;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.drysill.physics.Bounds;
import org.drysill.physics.Range;

/**
 * Several estimates of one quantity that itself varies, by the random effects of DerSimonian and
 * Laird 1986 (memory).
 *
 * <pre>
 * w = 1/s²,  m = Σwx/Σw,  Q = Σw(x − m)²
 * τd² = max(0, (Q − (k − 1)) / (Σw − Σw²/Σw))
 * τ² = ((k − 1)·τd² + ν0·τ0²) / (k − 1 + ν0)
 * mean = Σw*x/Σw*,  w* = 1/(s² + τ²),  own variance = 1/Σw*
 * half width = √(t²·own variance + z²·(Σw*c/Σw*)²)
 * </pre>
 *
 * <p>s own and c shared standard errors, k the number of estimates, z the normal quantile. t is
 * Student's, for the effective degrees of freedom of Welch and Satterthwaite (as in the Guide to
 * the Expression of Uncertainty in Measurement, annex G; memory): those of the estimates for what τ
 * does not explain, k − 1 + ν0 for the rest. τ0 is the spread that is expected before any estimate
 * and ν0 how many it is worth: one or two decays cannot tell how the air change varies from day to
 * day, and must not pose as its mean.
 *
 * @param mean the combined value
 * @param ownError standard error by scatter
 * @param sharedError standard error that the estimates have in common
 * @param between standard deviation τ between estimates beyond their own errors
 * @param degreesOfFreedom behind the own error
 * @param count how many estimates
 */
public record RandomEffects(
    double mean,
    double ownError,
    double sharedError,
    double between,
    double degreesOfFreedom,
    int count) {
  private static final double NORMAL = 1e9;
  private static final double LEAST_ERROR = 1e-6;

  /** Combines at least one estimate. */
  public static RandomEffects of(List<Estimate> estimates, ExpectedSpread expected) {
    Bounds.atLeast("number of estimates", estimates.size(), 1);
    double degrees = estimates.size() - 1 + expected.worth();
    double tau =
        Math.sqrt(
            ((estimates.size() - 1) * varianceBetween(estimates)
                    + expected.worth() * square(expected.deviation()))
                / degrees);
    ToDoubleFunction<Estimate> weight = e -> 1 / (square(ownError(e)) + tau * tau);
    double weights = estimates.stream().mapToDouble(weight).sum();
    double own = 1 / weights;
    double within = 1 / estimates.stream().mapToDouble(RandomEffects::precision).sum();
    return new RandomEffects(
        weighted(estimates, weight, Estimate::value),
        Math.sqrt(own),
        weighted(estimates, weight, Estimate::sharedError),
        tau,
        square(own)
            / (square(within) / estimates.stream().mapToDouble(Estimate::degreesOfFreedom).sum()
                + square(own - within) / degrees),
        estimates.size());
  }

  /** The mean give or take the half width of a confidence. */
  public Range interval(double confidence) {
    double half =
        Math.hypot(
            StudentT.twoSided(confidence, degreesOfFreedom) * ownError,
            StudentT.twoSided(confidence, NORMAL) * sharedError);
    return Range.around(mean, half);
  }

  private static double varianceBetween(List<Estimate> estimates) {
    double weights = estimates.stream().mapToDouble(RandomEffects::precision).sum();
    double squares = estimates.stream().mapToDouble(e -> square(precision(e))).sum();
    double mean = weighted(estimates, RandomEffects::precision, Estimate::value);
    double q = estimates.stream().mapToDouble(e -> precision(e) * square(e.value() - mean)).sum();
    int degrees = estimates.size() - 1;
    return degrees > 0 && q > degrees ? (q - degrees) / (weights - squares / weights) : 0;
  }

  private static double weighted(
      List<Estimate> estimates,
      ToDoubleFunction<Estimate> weight,
      ToDoubleFunction<Estimate> value) {
    double sum =
        estimates.stream().mapToDouble(e -> weight.applyAsDouble(e) * value.applyAsDouble(e)).sum();
    return sum / estimates.stream().mapToDouble(weight).sum();
  }

  private static double precision(Estimate estimate) {
    return 1 / square(ownError(estimate));
  }

  /** Perfect readings must not divide by zero. */
  private static double ownError(Estimate estimate) {
    return Math.max(estimate.ownError(), LEAST_ERROR);
  }

  private static double square(double x) {
    return x * x;
  }
}
