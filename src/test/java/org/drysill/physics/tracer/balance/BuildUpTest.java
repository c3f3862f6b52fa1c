package org.drysill.physics.tracer.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.drysill.physics.Range;
import org.drysill.physics.tracer.TracerSeries;
import org.drysill.physics.tracer.balance.BuildUp.Outcome;
import org.drysill.physics.tracer.fit.ExponentialFit;
import org.drysill.physics.tracer.fit.FittedExponential;
import org.drysill.physics.tracer.fit.Prior;
import org.junit.jupiter.api.Test;

class BuildUpTest {
  private static final Range VOLUME = Range.exactly(30);

  /** Two sleepers of 3.6 ml/s, 30 m³, n = 0.6/h: q = 5 l/s, S = 1440 ppm. */
  private static final Range EMISSION = new Range(6e-6, 7.2e-6, 8.4e-6);

  @Test
  void a_night_tells_flow_by_its_end_and_air_change_by_its_bend() {
    BuildUp read = ((Outcome.Read) night(BuildUpTest::twoSleepers, 8, 8e-6)).buildUp();
    assertThat(read.steadyExcess().likely()).isCloseTo(1440e-6, within(15e-6));
    assertThat(read.flowM3S().likely()).isCloseTo(0.005, within(0.0001));
    assertThat(read.flowM3S().low()).isBetween(0.0038, 0.0042);
    assertThat(read.flowM3S().high()).isBetween(0.0058, 0.0064);
    assertThat(read.bendPerHour().low()).isLessThan(0.6);
    assertThat(read.bendPerHour().high()).isGreaterThan(0.6);
    assertThat(read.agree()).isTrue();
  }

  /** One sleeper where two were stated: the end says twice the air that the bend says. */
  @Test
  void a_wrong_number_of_sleepers_shows() {
    DoubleUnaryOperator one = t -> twoSleepers(t) / 2;
    assertThat(((Outcome.Read) night(one, 8, 1e-6)).buildUp().agree()).isFalse();
    DoubleUnaryOperator four = t -> twoSleepers(t) * 2.2;
    assertThat(((Outcome.Read) night(four, 8, 1e-6)).buildUp().agree()).isFalse();
  }

  @Test
  void a_night_that_hardly_bends_is_not_read() {
    DoubleUnaryOperator slow = t -> 200e-6 + 3000e-6 * (1 - Math.exp(-0.05 * t));
    Outcome.Unread unread = (Outcome.Unread) night(slow, 4, 10e-6);
    assertThat(Math.abs(unread.relativeError())).isGreaterThan(0.15);
    assertThat(unread.allowed()).isEqualTo(0.15);
  }

  /** Growing without end, it bends the wrong way. */
  @Test
  void what_rises_ever_faster_is_not_read() {
    assertThat(night(t -> 200e-6 * Math.exp(0.3 * t), 8, 0)).isInstanceOf(Outcome.Unread.class);
  }

  /** The level stands clear of its scatter: it is the direction of the bend that forbids it. */
  @Test
  void a_level_that_scatter_bends_away_from_is_not_read() {
    Random dice = new Random(10);
    double[] hours = IntStream.range(0, 97).mapToDouble(i -> i / 12.0).toArray();
    double[] excess =
        IntStream.range(0, 97).mapToDouble(i -> 500e-6 + 30e-6 * dice.nextGaussian()).toArray();
    TracerSeries night = TracerSeries.of(hours, excess);
    FittedExponential fit =
        ExponentialFit.anywhere(night.hours(), night.excesses(), night.weights(), Prior.UNKNOWN);
    assertThat(fit.ratePerHour()).isNegative();
    assertThat(fit.level()).isCloseTo(500e-6, within(10e-6));
    Outcome.Unread unread = (Outcome.Unread) BuildUp.of(night, 20e-6, EMISSION, VOLUME, 2, 0.15);
    assertThat(unread.relativeError()).isBetween(0.0, unread.allowed());
  }

  @Test
  void an_offset_that_is_large_beside_the_end_is_not_read() {
    assertThat(
            BuildUp.of(
                series(BuildUpTest::twoSleepers, 8, 8e-6), 150e-6, EMISSION, VOLUME, 10, 0.2))
        .isInstanceOf(Outcome.Unread.class);
    assertThat(
            BuildUp.of(series(BuildUpTest::twoSleepers, 8, 8e-6), 150e-6, EMISSION, VOLUME, 2, 0.1))
        .isInstanceOf(Outcome.Unread.class);
  }

  /**
   * Rising to 1440 ppm at 0.6/h, but in a room of 3 m³ the flow of that end is 6 changes an hour.
   */
  @Test
  void an_end_that_asks_for_more_air_than_the_bend_shows_does_not_agree() {
    TracerSeries night = series(BuildUpTest::twoSleepers, 8, 1e-6);
    Outcome small = BuildUp.of(night, 20e-6, EMISSION, Range.exactly(3), 2, 0.15);
    assertThat(((Outcome.Read) small).buildUp().agree()).isFalse();
    Outcome large = BuildUp.of(night, 20e-6, EMISSION, Range.exactly(300), 2, 0.15);
    assertThat(((Outcome.Read) large).buildUp().agree()).isFalse();
  }

  @Test
  void half_an_hour_is_no_night() {
    assertThatThrownBy(() -> night(BuildUpTest::twoSleepers, 0.5, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("readings");
  }

  private static double twoSleepers(double t) {
    return 1440e-6 * (1 - Math.exp(-0.6 * t)) + 200e-6 * Math.exp(-0.6 * t);
  }

  private static Outcome night(DoubleUnaryOperator curve, double hours, double noise) {
    return BuildUp.of(series(curve, hours, noise), 20e-6, EMISSION, VOLUME, 2, 0.15);
  }

  private static TracerSeries series(DoubleUnaryOperator curve, double hours, double noise) {
    Random dice = new Random(5);
    double[] times =
        IntStream.rangeClosed(0, (int) (hours * 12)).mapToDouble(i -> i / 12.0).toArray();
    double[] excess =
        IntStream.range(0, times.length)
            .mapToDouble(i -> curve.applyAsDouble(times[i]) + noise * dice.nextGaussian())
            .toArray();
    return TracerSeries.of(times, excess);
  }
}
