package org.drysill.physics.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import java.util.stream.DoubleStream;
import org.drysill.physics.HylandWexler;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What {@link Iso13788Vapour} says of its agreement with other formulas, at every half degree: over
 * water with the steam tables IAPWS-IF97 as an independent library computes them, over ice with
 * Hyland and Wexler.
 */
class SaturationAgreementTest {
  private static final IF97 STEAM_TABLES = new IF97(IF97.UnitSystem.SI);

  static DoubleStream from_0_to_60() {
    return DoubleStream.iterate(0.01, t -> t <= 60.1, t -> t + 0.5);
  }

  static DoubleStream from_minus_20_to_0() {
    return DoubleStream.iterate(-20, t -> t < 0, t -> t + 0.5);
  }

  @ParameterizedTest
  @MethodSource("from_0_to_60")
  void agrees_with_the_steam_tables_within_0_3_percent(double celsius) {
    double tables = STEAM_TABLES.saturationPressureT(celsius + 273.15);
    assertThat(Iso13788Vapour.saturationPressurePa(celsius))
        .isCloseTo(tables, within(0.003 * tables));
  }

  @ParameterizedTest
  @MethodSource("from_minus_20_to_0")
  void agrees_with_hyland_and_wexler_over_ice_within_0_6_percent(double celsius) {
    double theirs = HylandWexler.saturationPressurePa(celsius);
    assertThat(Iso13788Vapour.saturationPressurePa(celsius))
        .isCloseTo(theirs, within(0.006 * theirs));
  }

  @ParameterizedTest
  @CsvSource({"-30, -0.011", "-40, -0.019"})
  void is_low_in_deep_frost_by_what_it_says(double celsius, double share) {
    double theirs = HylandWexler.saturationPressurePa(celsius);
    assertThat(Iso13788Vapour.saturationPressurePa(celsius) / theirs - 1)
        .isCloseTo(share, within(0.001));
  }

  /** Trap named for outdoor data: 80 % over water at −5 °C is 84 % over ice (Hyland and Wexler). */
  @Test
  void eighty_percent_over_water_at_minus_5_is_84_over_ice() {
    assertThat(Iso13788Vapour.humidityOverIce(-5, 0.80)).isCloseTo(0.84, within(0.002));
    assertThat(
            MoistAir.vapourPressurePa(-5, 0.80, HumidityReference.OVER_WATER)
                / Iso13788Vapour.saturationPressurePa(-5))
        .isCloseTo(0.84, within(0.002));
  }

  @Test
  void above_0_water_and_ice_are_the_same_reference() {
    assertThat(Iso13788Vapour.humidityOverIce(3, 0.6)).isEqualTo(0.6);
    assertThat(Iso13788Vapour.saturationPressurePa(3, HumidityReference.OVER_WATER))
        .isEqualTo(Iso13788Vapour.saturationPressurePa(3, HumidityReference.OVER_ICE));
  }

  @Test
  void the_two_branches_meet_at_0() {
    assertThat(Iso13788Vapour.saturationPressurePa(0)).isEqualTo(610.5);
    assertThat(Iso13788Vapour.saturationPressurePa(-1e-12)).isCloseTo(610.5, within(1e-6));
  }

  /** US Standard Atmosphere 1976: 89 875 Pa at 1000 m, 79 495 Pa at 2000 m (memory). */
  @ParameterizedTest
  @CsvSource({"0, 101325", "1000, 89875", "2000, 79495"})
  void station_pressure_follows_the_standard_atmosphere(double metres, double pascal) {
    assertThat(StandardAtmosphere.pressurePa(metres)).isCloseTo(pascal, within(0.0005 * pascal));
  }
}
