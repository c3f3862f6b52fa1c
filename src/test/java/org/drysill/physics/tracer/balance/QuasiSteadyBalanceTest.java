package org.drysill.physics.tracer.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.drysill.physics.Range;
import org.drysill.physics.tracer.TracerSeries;
import org.drysill.physics.tracer.balance.Balance.Found;
import org.drysill.physics.tracer.balance.Balance.Reason;
import org.drysill.physics.tracer.balance.Balance.Refused;
import org.drysill.reference.logs.LogRules;
import org.drysill.reference.readings.ReadingRules;
import org.junit.jupiter.api.Test;

class QuasiSteadyBalanceTest {
  private static final LogRules RULES = LogRules.bundled();
  private static final BalanceLimits VAPOUR =
      RULES.balance().ofVapour(ReadingRules.bundled().balance());
  private static final BalanceLimits CO2 = RULES.balance().ofCo2();
  private static final Range TEN_KG_A_DAY = new Range(7, 10, 13).times(1 / 86400.0);

  @Test
  void a_period_of_no_length_covers_nothing() {
    assertThat(new PeriodMean(0.003, 0.0003, 0, 0).coverage()).isZero();
  }

  /** G = 10 kg/d and 3 g/m³: q = 139 m³/h, in 250 m³ n = 0.556/h (arithmetic). */
  @Test
  void a_week_of_vapour_tells_the_air_within_the_error_of_the_production() {
    PeriodMean week = new PeriodMean(0.003, 0.0003, 7, 7);
    Range flow = found(QuasiSteadyBalance.flowM3S(TEN_KG_A_DAY, week, VAPOUR));
    assertThat(flow.likely() * 3600).isCloseTo(138.9, within(0.1));
    assertThat(flow.low() * 3600).isCloseTo(7.0 / 24 / 0.0036, within(0.1));
    assertThat(flow.high() * 3600).isCloseTo(13.0 / 24 / 0.0024, within(0.1));
    Range airChange =
        found(QuasiSteadyBalance.airChangePerHour(TEN_KG_A_DAY, Range.exactly(250), week, VAPOUR));
    assertThat(airChange.likely()).isCloseTo(0.556, within(0.001));
  }

  @Test
  void known_air_tells_the_production() {
    PeriodMean week = new PeriodMean(0.003, 0, 8, 7.5);
    Range production =
        found(QuasiSteadyBalance.production(Range.exactly(138.889 / 3600), week, VAPOUR));
    assertThat(production.likely() * 86400).isCloseTo(10, within(0.001));
  }

  /** Two people of 4 ml/s over a mean excess of 500 ppm: 16 l/s. */
  @Test
  void a_day_of_co2_tells_the_air_of_its_people() {
    PeriodMean day = new PeriodMean(500e-6, 30e-6, 1, 1);
    Range flow = found(QuasiSteadyBalance.flowM3S(new Range(6e-6, 8e-6, 10e-6), day, CO2));
    assertThat(flow.likely()).isCloseTo(0.016, within(1e-9));
    assertThat(flow.low()).isCloseTo(6.0 / 560, within(1e-9));
    assertThat(flow.high()).isCloseTo(10.0 / 440, within(1e-9));
  }

  @Test
  void what_cannot_be_balanced_is_refused_with_its_numbers() {
    assertThat(refused(new PeriodMean(0.0009, 0, 8, 8)))
        .isEqualTo(new Refused(Reason.EXCESS_TOO_SMALL, 0.0009, 0.001));
    assertThat(refused(new PeriodMean(0.003, 0, 6.9, 6.9)))
        .isEqualTo(new Refused(Reason.PERIOD_TOO_SHORT, 6.9, 7));
    assertThat(refused(new PeriodMean(0.003, 0, 10, 6)))
        .isEqualTo(new Refused(Reason.TOO_MANY_GAPS, 0.6, 0.8));
    assertThat(refused(new PeriodMean(0.0015, 0.001, 8, 8)).reason())
        .isEqualTo(Reason.EXCESS_TOO_UNCERTAIN);
  }

  @Test
  void a_mean_is_one_of_time_and_not_of_readings() {
    double[] hours = {0, 1, 2, 10, 10.5, 11};
    double[] excess = {2, 2, 4, 4, 4, 4};
    PeriodMean mean = PeriodMean.of(TracerSeries.of(hours, excess), 0.5, 2);
    assertThat(mean.excess()).isCloseTo((2 + 3 + 4) / 3.0, within(1e-12));
    assertThat(mean.coverage()).isCloseTo(3 / 11.0, within(1e-12));
    assertThat(mean.spanDays()).isCloseTo(11 / 24.0, within(1e-12));
    assertThat(mean.uncertainty()).isEqualTo(0.5);
  }

  @Test
  void readings_too_far_apart_have_no_mean() {
    TracerSeries apart = TracerSeries.of(new double[] {0, 5}, new double[] {1, 1});
    assertThatThrownBy(() -> PeriodMean.of(apart, 0, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("between readings");
    assertThat(new PeriodMean(1, 0, 0, 0).coverage()).isZero();
  }

  /** Storage comes and goes: over whole days of a swinging room the balance closes. */
  @Test
  void a_swing_of_whole_days_leaves_the_mean_alone() {
    double[] hours = IntStream.rangeClosed(0, 7 * 24 * 6).mapToDouble(i -> i / 6.0).toArray();
    double[] excess = new double[hours.length];
    for (int i = 0; i < hours.length; i++) {
      excess[i] = 0.003 + 0.001 * Math.sin(2 * Math.PI * hours[i] / 24);
    }
    PeriodMean week = PeriodMean.of(TracerSeries.of(hours, excess), 0, 0.5);
    assertThat(week.excess()).isCloseTo(0.003, within(1e-9));
    assertThat(week.coverage()).isEqualTo(1);
  }

  private static Range found(Balance balance) {
    return ((Found) balance).range();
  }

  private static Refused refused(PeriodMean mean) {
    return (Refused) QuasiSteadyBalance.flowM3S(TEN_KG_A_DAY, mean, VAPOUR);
  }
}
