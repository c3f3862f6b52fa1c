package org.drysill.physics.tracer;

import java.util.List;
import org.drysill.physics.Range;
import org.drysill.physics.tracer.fit.Estimate;
import org.drysill.physics.tracer.fit.FittedExponential;
import org.drysill.physics.tracer.fit.RandomEffects;

/**
 * The rates of several decays as one. Their logarithms are combined: errors are shares of a rate,
 * so that slow decays would otherwise count for more than fast ones, and a rate is never negative.
 *
 * @param logarithms the combined logarithm of the rate
 */
public record CombinedRate(RandomEffects logarithms) {
  /** Combines at least one fit, each with a rate above 0. */
  static CombinedRate of(List<FittedExponential> fits, Confidence confidence) {
    List<Estimate> logarithms =
        fits.stream().map(fit -> logarithm(fit, confidence.model())).toList();
    return new CombinedRate(RandomEffects.of(logarithms, confidence.daily()));
  }

  private static Estimate logarithm(FittedExponential fit, double model) {
    return new Estimate(
        Math.log(fit.ratePerHour()),
        fit.readingError() / fit.ratePerHour(),
        Math.hypot(fit.levelError() / fit.ratePerHour(), model),
        fit.degreesOfFreedom());
  }

  /** The rate with its interval [1/h]. */
  Range perHour(double confidence) {
    Range logarithm = logarithms.interval(confidence);
    return new Range(
        Math.exp(logarithm.low()), Math.exp(logarithm.likely()), Math.exp(logarithm.high()));
  }

  /** How many decays stand behind it. */
  int decays() {
    return logarithms.count();
  }

  /** Standard deviation of the rate between decays beyond their errors, as a share of it. */
  double between() {
    return logarithms.between();
  }
}
