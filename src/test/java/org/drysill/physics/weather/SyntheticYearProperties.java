package org.drysill.physics.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.drysill.physics.air.Iso13788Vapour;
import org.junit.jupiter.api.Test;

/** What a year made from months keeps. */
class SyntheticYearProperties {
  private static double[] months(double cold, double swing) {
    return IntStream.range(0, 12)
        .mapToDouble(m -> cold + swing * (1 - Math.cos(2 * Math.PI * m / 12)) / 2)
        .toArray();
  }

  private static double[] vapour(double[] celsius, double humidity) {
    return IntStream.range(0, 12)
        .mapToDouble(m -> humidity * Iso13788Vapour.saturationPressurePa(celsius[m]))
        .toArray();
  }

  private static double[] hourly(HourlyYear year, boolean temperature) {
    return IntStream.range(0, HourlyYear.HOURS)
        .mapToDouble(h -> temperature ? year.celsius(h) : year.vapourPa(h))
        .toArray();
  }

  @Property(tries = 60)
  void means_of_months_are_kept_and_no_hour_exceeds_saturation(
      @ForAll @DoubleRange(min = -15, max = 15) double cold,
      @ForAll @DoubleRange(min = 0, max = 25) double swing,
      @ForAll @DoubleRange(min = 0.3, max = 0.98) double humidity,
      @ForAll @LongRange(min = 0, max = 1000) long seed) {
    double[] celsius = months(cold, swing);
    double[] vapour = vapour(celsius, humidity);
    HourlyYear year = new SyntheticYear(2, 5, 3, 2, 0.7, seed).of(celsius, vapour, 6);
    double[] temperatures = HourlyYear.monthlyMeans(hourly(year, true));
    double[] pressures = HourlyYear.monthlyMeans(hourly(year, false));
    for (int m = 0; m < 12; m++) {
      assertThat(temperatures[m]).isCloseTo(celsius[m], within(1e-9));
      assertThat(pressures[m]).isCloseTo(vapour[m], within(1e-6));
    }
    for (int h = 0; h < HourlyYear.HOURS; h++) {
      assertThat(year.vapourPa(h))
          .isBetween(0.0, Iso13788Vapour.saturationPressurePa(year.celsius(h)) * (1 + 1e-12));
    }
  }

  @Test
  void the_same_seed_makes_the_same_year_and_another_another() {
    double[] celsius = months(3, 14);
    double[] vapour = vapour(celsius, 0.8);
    SyntheticYear one = new SyntheticYear(2, 5, 3, 2, 0.7, 1);
    HourlyYear first = one.of(celsius, vapour, 6);
    HourlyYear again = one.of(celsius, vapour, 6);
    HourlyYear other = new SyntheticYear(2, 5, 3, 2, 0.7, 2).of(celsius, vapour, 6);
    assertThat(hourly(again, true)).isEqualTo(hourly(first, true));
    assertThat(hourly(again, false)).isEqualTo(hourly(first, false));
    assertThat(hourly(other, true)).isNotEqualTo(hourly(first, true));
  }

  @Test
  void afternoons_are_warmer_than_nights_by_the_swing() {
    double[] celsius = months(3, 14);
    HourlyYear year = new SyntheticYear(2, 5, 0, 0, 0.7, 1).of(celsius, vapour(celsius, 0.7), 6);
    int noonOfJanuary = 15 * 24 + 14;
    assertThat(year.celsius(noonOfJanuary) - year.celsius(noonOfJanuary - 12))
        .isCloseTo(4, within(0.3));
    int noonOfJuly = 196 * 24 + 14;
    assertThat(year.celsius(noonOfJuly) - year.celsius(noonOfJuly - 12)).isCloseTo(10, within(0.5));
  }

  @Test
  void a_month_above_saturation_counts_as_saturated() {
    double[] celsius = months(5, 0);
    HourlyYear year = new SyntheticYear(2, 2, 1, 1, 0.5, 1).of(celsius, vapour(celsius, 1.3), 6);
    assertThat(year.vapourPa(40))
        .isCloseTo(Iso13788Vapour.saturationPressurePa(year.celsius(40)), within(1e-6));
  }

  @Test
  void months_begin_where_the_calendar_says() {
    assertThat(HourlyYear.firstHour(0)).isZero();
    assertThat(HourlyYear.firstHour(1)).isEqualTo(744);
    assertThat(HourlyYear.firstHour(12)).isEqualTo(HourlyYear.HOURS);
    assertThat(HourlyYear.month(743)).isZero();
    assertThat(HourlyYear.month(744)).isEqualTo(1);
    assertThat(HourlyYear.month(8759)).isEqualTo(11);
  }

  @Test
  void refuses_what_is_no_year() {
    double[] twelve = new double[12];
    double[] few = new double[11];
    double[] hours = new double[HourlyYear.HOURS];
    SyntheticYear plain = new SyntheticYear(2, 2, 1, 1, 0.5, 1);
    assertThatThrownBy(() -> plain.of(few, twelve, 6)).hasMessageContaining("months");
    assertThatThrownBy(() -> plain.of(twelve, few, 6)).hasMessageContaining("months");
    assertThatThrownBy(() -> new HourlyYear(few, hours)).hasMessageContaining("hours");
    assertThatThrownBy(() -> new HourlyYear(hours, few)).hasMessageContaining("hours");
    assertThatThrownBy(() -> new SyntheticYear(2, 2, 1, 1, 1, 1))
        .hasMessageContaining("persistence");
  }
}
