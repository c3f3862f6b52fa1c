package org.drysill.physics.mould;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What must hold for the mould index anywhere. */
class MouldProperties {
  private static double after(
      int hours, double celsius, double humidity, MouldSensitivity surface) {
    MouldIndex index = MouldIndex.CLEAN;
    for (int h = 0; h < hours; h++) {
      index = index.after(celsius, humidity, surface, 0.1);
    }
    return index.value();
  }

  @Property(tries = 200)
  void moister_surfaces_never_grow_less(
      @ForAll MouldSensitivity surface,
      @ForAll @DoubleRange(min = -5, max = 30) double celsius,
      @ForAll @DoubleRange(min = 60, max = 100) double humidity,
      @ForAll @DoubleRange(min = 0, max = 20) double more,
      @ForAll @IntRange(min = 1, max = 2000) int hours) {
    assertThat(after(hours, celsius, humidity + more, surface))
        .isGreaterThanOrEqualTo(after(hours, celsius, humidity, surface));
  }

  /**
   * RHcrit is 100 % at 0 °C and above it below: the index has no share of what is left to 100 %.
   */
  @ParameterizedTest
  @EnumSource(MouldSensitivity.class)
  void in_frost_nothing_grows_however_wet_a_reading_is(MouldSensitivity surface) {
    assertThat(MouldGrowth.criticalHumidity(0, surface)).isEqualTo(100);
    assertThat(MouldGrowth.criticalHumidity(-5, surface)).isBetween(119.0, 121.0);
    for (double celsius : new double[] {0, -5}) {
      for (double humidity : new double[] {100, 105, 130}) {
        assertThat(MouldGrowth.highestIndex(celsius, humidity, surface)).isZero();
      }
    }
  }

  @Property(tries = 200)
  void less_sensitive_surfaces_never_grow_more(
      @ForAll @DoubleRange(min = -5, max = 30) double celsius,
      @ForAll @DoubleRange(min = 60, max = 110) double humidity,
      @ForAll @IntRange(min = 1, max = 2000) int hours) {
    double before = 6;
    for (MouldSensitivity surface : MouldSensitivity.values()) {
      double grown = after(hours, celsius, humidity, surface);
      assertThat(grown).isBetween(0.0, before);
      before = grown;
    }
  }

  @Property(tries = 100)
  void growth_ends_at_the_highest_index(
      @ForAll MouldSensitivity surface,
      @ForAll @DoubleRange(min = 1, max = 30) double celsius,
      @ForAll @DoubleRange(min = 60, max = 100) double humidity) {
    double highest = MouldGrowth.highestIndex(celsius, humidity, surface);
    assertThat(MouldGrowth.ratePerDay(celsius, humidity, highest, surface)).isZero();
    assertThat(after(20_000, celsius, humidity, surface)).isLessThanOrEqualTo(highest + 0.01);
  }

  @Test
  void frost_and_dry_air_let_nothing_grow() {
    assertThat(MouldGrowth.grows(-1, 100, MouldSensitivity.VERY_SENSITIVE)).isFalse();
    assertThat(MouldGrowth.grows(0.05, 100, MouldSensitivity.VERY_SENSITIVE)).isFalse();
    assertThat(MouldGrowth.grows(70, 100, MouldSensitivity.VERY_SENSITIVE)).isFalse();
    assertThat(MouldGrowth.grows(20, 79, MouldSensitivity.VERY_SENSITIVE)).isFalse();
    assertThat(MouldGrowth.highestIndex(-3, 99, MouldSensitivity.SENSITIVE)).isZero();
  }

  @Test
  void what_has_grown_goes_back_slowly_and_not_below_nothing() {
    MouldIndex index = new MouldIndex(0.001, 0);
    for (int h = 0; h < 48; h++) {
      index = index.after(20, 40, MouldSensitivity.SENSITIVE, 1);
    }
    assertThat(index.value()).isZero();
    assertThat(index.dryHours()).isEqualTo(48);
    assertThat(index.after(20, 95, MouldSensitivity.SENSITIVE, 1).dryHours()).isZero();
  }

  @Test
  void a_day_of_rest_lies_between_two_falls() {
    MouldIndex index = new MouldIndex(2, 10);
    assertThat(index.after(20, 40, MouldSensitivity.SENSITIVE, 1).value()).isEqualTo(2);
  }

  @Test
  void refuses_what_is_no_index_and_no_humidity() {
    assertThatThrownBy(() -> new MouldIndex(7, 0)).hasMessageContaining("mould index");
    assertThatThrownBy(() -> MouldGrowth.weeksToFirstGrowth(20, 0, MouldSensitivity.SENSITIVE))
        .hasMessageContaining("humidity");
    assertThatThrownBy(() -> MouldGrowth.weeksToFirstGrowth(-1, 90, MouldSensitivity.SENSITIVE))
        .hasMessageContaining("temperature");
  }
}
