package org.drysill.physics.tracer.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.drysill.physics.flow.TracerGas;
import org.junit.jupiter.api.Test;

class ExponentialFitTest {
  private static final double[] HOURS =
      IntStream.rangeClosed(0, 48).mapToDouble(i -> i / 12.0).toArray();
  private static final double[] ONES = Arrays.stream(HOURS).map(h -> 1).toArray();

  @Test
  void perfect_readings_give_back_the_curve() {
    FittedExponential fit =
        ExponentialFit.decay(HOURS, curve(0.7, 1500, 30, 0, 1), ONES, new Prior(0, 50));
    assertThat(fit.ratePerHour()).isCloseTo(0.7, within(1e-6));
    assertThat(fit.amplitude()).isCloseTo(1500, within(0.01));
    assertThat(fit.level()).isCloseTo(30, within(0.01));
    assertThat(fit.rSquared()).isCloseTo(1, within(1e-9));
  }

  @Test
  void a_level_known_exactly_stays_where_it_is() {
    FittedExponential fit =
        ExponentialFit.decay(HOURS, curve(0.7, 1500, 0, 5, 1), ONES, new Prior(0, 0));
    assertThat(fit.level()).isCloseTo(0, within(0.01));
    assertThat(fit.levelError()).isLessThan(0.01 * fit.readingError());
  }

  /** Two short times: the error of a doubtful background is that of the two-point formula. */
  @Test
  void a_doubtful_level_counts_as_in_the_formula_for_two_points() {
    double[] hours = {0, 0.001, 0.002, 0.003, 2.497, 2.498, 2.499, 2.5};
    double[] ones = {1, 1, 1, 1, 1, 1, 1, 1};
    double[] values = Arrays.stream(hours).map(h -> 1580 * Math.exp(-0.4766 * h)).toArray();
    FittedExponential fit = ExponentialFit.decay(hours, values, ones, new Prior(0, 0.5));
    double expected = TracerGas.uncertaintyOfDecayPerHour(2000, values[7] + 420, 420, 2.5, 0, 0.5);
    assertThat(fit.ratePerHour()).isCloseTo(0.4766, within(1e-5));
    assertThat(fit.standardError()).isLessThan(expected * 1.1);
  }

  /** The stated error is that of many repetitions, within what 400 of them can tell. */
  @Test
  void the_stated_error_is_the_scatter_of_repetitions() {
    double sum = 0;
    double squares = 0;
    double stated = 0;
    int count = 400;
    for (int seed = 0; seed < count; seed++) {
      FittedExponential fit =
          ExponentialFit.decay(HOURS, curve(0.5, 1000, 0, 15, seed), ONES, new Prior(0, 0));
      sum += fit.ratePerHour();
      squares += fit.ratePerHour() * fit.ratePerHour();
      stated += fit.readingError() * fit.readingError();
    }
    double mean = sum / count;
    double scatter = Math.sqrt(squares / count - mean * mean);
    assertThat(mean).isCloseTo(0.5, within(4 * scatter / Math.sqrt(count)));
    assertThat(Math.sqrt(stated / count)).isBetween(0.9 * scatter, 1.35 * scatter);
  }

  /** Noise that lasts makes fewer independent readings. */
  @Test
  void lasting_noise_widens_the_error() {
    double[] values = curve(0.5, 1000, 0, 0, 1);
    Random dice = new Random(4);
    double noise = 0;
    for (int i = 0; i < values.length; i++) {
      noise = 0.8 * noise + 9 * dice.nextGaussian();
      values[i] += noise;
    }
    FittedExponential lasting = ExponentialFit.decay(HOURS, values, ONES, new Prior(0, 0));
    assertThat(lasting.autocorrelation()).isGreaterThan(0.5);
    assertThat(lasting.effectiveReadings()).isLessThan(HOURS.length / 3.0);
    assertThat(lasting.degreesOfFreedom()).isLessThan(HOURS.length / 3.0);
  }

  @Test
  void a_reading_of_weight_four_is_worth_four() {
    double[] values = curve(0.5, 1000, 0, 15, 3);
    double[] fours = Arrays.stream(HOURS).map(h -> 4).toArray();
    FittedExponential one = ExponentialFit.decay(HOURS, values, ONES, new Prior(0, 0));
    FittedExponential four = ExponentialFit.decay(HOURS, values, fours, new Prior(0, 0));
    assertThat(four.ratePerHour()).isCloseTo(one.ratePerHour(), within(1e-9));
    assertThat(four.scatter()).isCloseTo(2 * one.scatter(), within(1e-6));
  }

  @Test
  void a_rise_to_an_unknown_level_is_fitted_from_anywhere() {
    double[] values = curve(0.4, -800, 1200, 5, 2);
    FittedExponential fit = ExponentialFit.anywhere(HOURS, values, ONES, Prior.UNKNOWN);
    assertThat(fit.ratePerHour()).isCloseTo(0.4, within(3 * fit.standardError()));
    assertThat(fit.level()).isCloseTo(1200, within(3 * fit.levelUncertainty()));
    assertThat(fit.levelError()).isZero();
  }

  @Test
  void too_few_readings_and_a_flat_line_are_refused() {
    double[] three = {0, 1, 2};
    assertThatThrownBy(
            () -> ExponentialFit.decay(three, new double[] {3, 2, 1}, three, new Prior(0, 0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("number of readings");
    assertThatThrownBy(() -> ExponentialFit.decay(HOURS, ONES, ONES, new Prior(0, 0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("span");
  }

  private static double[] curve(
      double rate, double amplitude, double level, double noise, int seed) {
    Random dice = new Random((1000L + seed) * 0x9E3779B97F4A7C15L);
    return Arrays.stream(HOURS)
        .map(h -> level + amplitude * Math.exp(-rate * h) + noise * dice.nextGaussian())
        .toArray();
  }
}
