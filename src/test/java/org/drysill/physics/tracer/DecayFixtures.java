package org.drysill.physics.tracer;

import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.drysill.reference.logs.LogRules;

/** Series with one thing in them. */
final class DecayFixtures {
  static final LogRules RULES = LogRules.bundled();
  static final ReadingErrors CO2 = new ReadingErrors(10, 20);
  static final ReadingErrors VAPOUR = new ReadingErrors(0.05, 0.1);

  private DecayFixtures() {}

  /** Every five minutes from 0 to the end, both included. */
  static double[] every5Minutes(double hours) {
    return IntStream.rangeClosed(0, (int) Math.round(hours * 12))
        .mapToDouble(i -> i / 12.0)
        .toArray();
  }

  /** A curve with noise of a standard deviation. */
  static TracerSeries series(double hours, DoubleUnaryOperator excess, double noise) {
    double[] times = every5Minutes(hours);
    Random dice = new Random(11);
    double[] values =
        Arrays.stream(times)
            .map(t -> excess.applyAsDouble(t) + noise * dice.nextGaussian())
            .toArray();
    return TracerSeries.of(times, values);
  }

  /** Two hours of rise from nearly nothing to a height, then a decay at a rate. */
  static double riseAndDecay(double t, double height, double rate) {
    return t < 2 ? 50 + (height - 50) * t / 2 : height * Math.exp(-rate * (t - 2));
  }

  static Decays co2(TracerSeries series) {
    return Decays.find(series, CO2, new Substance.Inert(), RULES.decays().ofCo2());
  }
}
