package org.drysill.physics.tracer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.physics.tracer.DecayFixtures.RULES;
import static org.drysill.physics.tracer.DecayFixtures.co2;
import static org.drysill.physics.tracer.DecayFixtures.every5Minutes;
import static org.drysill.physics.tracer.DecayFixtures.riseAndDecay;
import static org.drysill.physics.tracer.DecayFixtures.series;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.drysill.physics.Range;
import org.drysill.physics.tracer.AirChangeEvidence.FromTracer;
import org.drysill.physics.tracer.AirChangeEvidence.FromVapour;
import org.drysill.physics.tracer.Stretch.Ending;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecaysTest {
  private static final Confidence CONFIDENCE = RULES.confidence().confidence();

  /** 2000 to 900 ppm in 2.5 h over 420 ppm is 0.4766/h by the two-point formula. */
  @Test
  void the_worked_example_of_two_points_comes_out_of_a_whole_log() {
    TracerSeries series =
        series(7, t -> t < 2 ? 100 + 740 * t : 1580 * Math.exp(-0.4766 * (t - 2)), 0);
    FromTracer air = (FromTracer) co2(series).airChange(CONFIDENCE).orElseThrow();
    assertThat(air.perHour().likely()).isCloseTo(0.4766, within(1e-4));
    assertThat(air.decays()).isEqualTo(1);
  }

  /** ASTM E741-11 (memory): shortest time between first and last sample at a rate. */
  @ParameterizedTest
  @CsvSource({"0.25, 4", "0.5, 2", "1, 1"})
  void a_decay_shorter_than_the_standard_asks_for_is_rejected(double rate, double least) {
    double settled = 2.25;
    DoubleUnaryOperator curve = t -> riseAndDecay(t, 3000, rate);
    Decays tooShort = co2(series(settled + least - 0.25, curve, 0));
    assertThat(tooShort.rejected())
        .extracting(Decay.Rejected::reason)
        .containsExactly(Rejection.TOO_SHORT);
    assertThat(tooShort.rejected().get(0).found()).isBetween(0.7, 1.0);
    assertThat(tooShort.rejected().get(0).allowed()).isEqualTo(1);
    assertThat(tooShort.airChange(CONFIDENCE)).isEmpty();
    assertThat(co2(series(settled + least + 0.25, curve, 0)).accepted()).hasSize(1);
  }

  @Test
  void a_decay_ends_where_it_sinks_into_doubt() {
    Decay decay = co2(series(16, t -> riseAndDecay(t, 1500, 0.5), 5)).all().get(0);
    assertThat(decay).isInstanceOf(Decay.Accepted.class);
    assertThat(decay.stretch().ending()).isEqualTo(Ending.FLOOR);
    assertThat(decay.stretch().endExcess()).isCloseTo(5 * Math.hypot(10, 20), within(15.0));
  }

  /** A night at a steady level is no part of the decay that follows. */
  @Test
  void a_decay_begins_where_the_concentration_leaves_its_plateau() {
    TracerSeries series =
        series(14, t -> t < 2 ? 50 + 475 * t : t < 8 ? 1000 : 1000 * Math.exp(-0.6 * (t - 8)), 8);
    Decay.Accepted decay = co2(series).accepted().get(0);
    assertThat(decay.stretch().startHours()).isBetween(8.2, 8.8);
    assertThat(decay.fit().ratePerHour()).isCloseTo(0.6, within(0.03));
  }

  @Test
  void a_rise_a_gap_and_a_standstill_are_told_apart() {
    DoubleUnaryOperator back = t -> t < 3.5 ? riseAndDecay(t, 1500, 0.4) : 823 + 300 * (t - 3.5);
    assertThat(reason(series(6, back, 0))).isEqualTo(Rejection.ROSE_AGAIN);
    DoubleUnaryOperator standstill = t -> Math.max(1000, riseAndDecay(t, 1500, 0.4));
    assertThat(reason(series(9, standstill, 0))).isEqualTo(Rejection.TOO_FLAT);
    double[] times = Arrays.stream(every5Minutes(10)).filter(t -> t < 3.5 || t > 5).toArray();
    double[] values = Arrays.stream(times).map(t -> riseAndDecay(t, 1500, 0.4)).toArray();
    assertThat(reason(TracerSeries.of(times, values))).isEqualTo(Rejection.CUT_BY_GAP);
  }

  @Test
  void a_low_excess_is_too_weak_and_says_by_how_much() {
    Decay.Rejected weak = co2(series(8, t -> riseAndDecay(t, 250, 0.5), 0)).rejected().get(0);
    assertThat(weak.reason()).isEqualTo(Rejection.TOO_WEAK);
    assertThat(weak.found()).isLessThan(weak.allowed());
    assertThat(weak.allowed()).isCloseTo(5 * Math.hypot(10, 20) * Math.E, within(1e-9));
  }

  @Test
  void a_fast_decay_between_few_readings_is_rejected() {
    Decay.Rejected few = co2(series(6, t -> riseAndDecay(t, 1500, 4), 0)).rejected().get(0);
    assertThat(few.reason()).isEqualTo(Rejection.TOO_FEW_READINGS);
    assertThat(few.found()).isLessThan(8);
  }

  /** One of two people goes first: the fall begins towards half of the excess. */
  @Test
  void a_fall_in_two_parts_is_no_exponential() {
    DoubleUnaryOperator inParts =
        t -> t < 5 ? riseAndDecay(t, 1600, 0.12) : 1116 * Math.exp(-0.9 * (t - 5));
    Decay.Rejected rejected = co2(series(8, inParts, 5)).rejected().get(0);
    assertThat(rejected.reason()).isEqualTo(Rejection.NOT_EXPONENTIAL);
    assertThat(rejected.found()).isLessThan(1 / 1.5);
  }

  @Test
  void a_bump_within_a_decay_is_seen_in_what_the_curve_leaves_over() {
    DoubleUnaryOperator bump =
        t -> riseAndDecay(t, 1600, 0.5) + (t > 3.4 && t < 4.2 ? 45 + 300 * (t - 3.4) : 0);
    Decay.Rejected rejected = co2(series(6.5, bump, 0)).rejected().get(0);
    assertThat(rejected.reason()).isIn(Rejection.NOT_SMOOTH, Rejection.ROSE_AGAIN);
  }

  @Test
  void outdoor_air_that_moves_spoils_a_decay() {
    double[] times = every5Minutes(7);
    double[] excess = Arrays.stream(times).map(t -> riseAndDecay(t, 1500, 0.5)).toArray();
    double[] outdoor = Arrays.stream(times).map(t -> 420 + 200 * t).toArray();
    double[] ones = Arrays.stream(times).map(t -> 1).toArray();
    assertThat(reason(TracerSeries.of(times, excess, outdoor, ones)))
        .isEqualTo(Rejection.OUTDOOR_MOVED);
  }

  @Test
  void a_rate_known_too_badly_is_rejected() {
    DecayRules co2 = RULES.decays().ofCo2();
    DecayRules strict =
        new DecayRules(
            co2.turn(),
            co2.floor(),
            co2.longestGapHours(),
            co2.settleHours(),
            co2.patienceHours(),
            co2.leastReadings(),
            co2.leastAirChanges(),
            co2.outdoorShare(),
            co2.halvesFactor(),
            co2.halvesErrors(),
            co2.scatterFactor(),
            co2.leastRSquared(),
            0.001);
    Decays decays =
        Decays.find(
            series(7, t -> riseAndDecay(t, 1500, 0.5), 5),
            DecayFixtures.CO2,
            new Substance.Inert(),
            strict);
    assertThat(decays.rejected().get(0).reason()).isEqualTo(Rejection.TOO_UNCERTAIN);
  }

  /** 6 g/m³ over a level of 2 that goes on: vapour falls to the level before, at n/M. */
  @Test
  void vapour_gives_bounds_and_no_value() {
    TracerSeries series =
        series(30, t -> t < 1 ? 2 : t < 2 ? 2 + 6 * (t - 1) : 2 + 6 * Math.exp(-0.1 * (t - 2)), 0);
    Decays decays =
        Decays.find(series, DecayFixtures.VAPOUR, RULES.vapour(), RULES.decays().ofVapour());
    FromVapour air = (FromVapour) decays.airChange(CONFIDENCE).orElseThrow();
    assertThat(air.atLeastPerHour()).isBetween(0.06, 0.1);
    assertThat(air.hardlyAbovePerHour()).isBetween(1.5, 2.5);
    assertThat(air.capacitance()).isEqualTo(new Range(5, 10, 15));
    assertThat(air.decays()).isEqualTo(1);
  }

  @Test
  void vapour_whose_level_before_nobody_logged_gives_nothing() {
    TracerSeries series = series(30, t -> 2 + 6 * Math.exp(-0.1 * t), 0);
    Decays decays =
        Decays.find(series, DecayFixtures.VAPOUR, RULES.vapour(), RULES.decays().ofVapour());
    assertThat(decays.rejected())
        .extracting(Decay.Rejected::reason)
        .containsExactly(Rejection.LEVEL_BEFORE_UNKNOWN);
  }

  @Test
  void a_store_smaller_than_the_air_is_refused() {
    assertThatThrownBy(() -> new Substance.Buffered(new Range(0.5, 5, 10)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("capacitance");
  }

  private static Rejection reason(TracerSeries series) {
    return co2(series).rejected().get(0).reason();
  }
}
