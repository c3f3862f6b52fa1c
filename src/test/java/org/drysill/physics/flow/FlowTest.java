package org.drysill.physics.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.drysill.physics.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlowTest {
  /** Moody chart (memory): smooth 0.0180 at 10⁵; fully rough 0.0379 at ε/D 0.01 and 10⁸. */
  @ParameterizedTest
  @CsvSource({"1e5, 0, 0.0180", "1e8, 0.01, 0.0379", "1e5, 0.001, 0.0222", "1000, 0.01, 0.064"})
  void friction_is_as_the_moody_chart_shows(double reynolds, double roughness, double expected) {
    assertThat(Colebrook.frictionFactor(reynolds, roughness)).isCloseTo(expected, within(0.0001));
  }

  @Test
  void a_still_duct_loses_nothing() {
    RoundDuct duct = new RoundDuct(0.1, 0);
    assertThat(duct.frictionPaPerM(0, RoundDuct.Air.ROOM)).isZero();
    assertThat(duct.fittingPa(1.2, 0, RoundDuct.Air.ROOM)).isZero();
    assertThatThrownBy(() -> duct.frictionFactor(0, RoundDuct.Air.ROOM))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Reynolds");
  }

  /** ½·1.2·6² = 21.6 Pa: a wind of 6 m/s presses with about 22 Pa (arithmetic of the pack). */
  @Test
  void a_fitting_of_one_loses_the_velocity_pressure() {
    RoundDuct duct = new RoundDuct(0.1, 0);
    double flow = 6 * Math.PI * 0.01 / 4;
    assertThat(duct.fittingPa(1, flow, RoundDuct.Air.ROOM)).isCloseTo(21.6, within(1e-9));
  }

  /** Printed with the range of the coefficient: a bottom-hung window at 90° is nearly open. */
  @ParameterizedTest
  @CsvSource({"0, 0", "10, 0.1744", "90, 0.8996", "180, 1.0087"})
  void a_tilted_window_opens_by_its_share(double degrees, double share) {
    assertThat(WindowAiring.bottomHungShare(degrees)).isCloseTo(share, within(0.0002));
  }

  @Test
  void two_equal_openings_share_the_stack_as_printed() {
    double two = Bs5925.singleSidedStackM3S(0.61, 0.1, 0.1, 2, 20, 5);
    double oneOfEach = 0.61 * 0.2 * 0.5 * Math.sqrt(15 * 9.80665 * 2 / 285.65);
    assertThat(two).isCloseTo(oneOfEach, within(1e-9));
  }

  /**
   * Two equal openings in a stack act as openings in series: both formulas of Table 8 and 9 meet.
   */
  @Test
  void a_stack_between_two_openings_is_the_same_on_one_side_or_two() {
    Orifice series = new Orifice(0.61, Bs5925.areaInSeriesM2(0.1, 0.1));
    assertThat(Bs5925.crossStackM3S(series, 2, 20, 5))
        .isCloseTo(Bs5925.singleSidedStackM3S(0.61, 0.1, 0.1, 2, 20, 5), within(1e-12));
  }

  /** Cross ventilation by wind is an orifice under the wind's own pressure. */
  @Test
  void cross_ventilation_is_an_orifice_in_the_wind() {
    Orifice series = new Orifice(0.61, 0.2);
    assertThat(Bs5925.crossWindM3S(series, 3, 0.5))
        .isCloseTo(series.flowM3S(0.5 * 1.2 * 9 / 2, 1.2), within(1e-12));
  }

  @Test
  void a_shut_opening_shuts_its_series() {
    assertThat(Bs5925.areaInSeriesM2(0, 1)).isZero();
    assertThat(Bs5925.areaInSeriesM2(0, 0)).isZero();
  }

  /** BS 5925 open country, k 0.68 and a 0.17 (memory): at 10 m the wind is about that measured. */
  @Test
  void at_ten_metres_in_open_country_the_wind_is_the_station_wind() {
    assertThat(Bs5925.windAtHeightMs(4, 0.68, 0.17, 10)).isCloseTo(4, within(0.05));
  }

  @Test
  void a_tight_envelope_leaks_nothing() {
    assertThat(new Iso13789Infiltration(0.07, 15).flowM3S(0, 0.01, 0)).isZero();
  }

  /** EN ISO 9972 by definition: 5 m³/(h·m²) on 250 m² around 250 m³ is 5 changes an hour. */
  @Test
  void permeability_and_air_change_at_50_pascal_are_one_leakage() {
    assertThat(LeakageDivisor.n50(5, 250, 250)).isEqualTo(5);
  }

  /** E741 readings 2000 and 900 ppm over 420 in 2.5 h, ±30 ppm each, background ±20 ppm. */
  @Test
  void an_uncertain_decay_says_so() {
    double u = TracerGas.uncertaintyOfDecayPerHour(2000, 900, 420, 2.5, 30, 20);
    double readings = 30 * Math.hypot(1 / 1580.0, 1 / 480.0);
    double background = 20 * (1 / 480.0 - 1 / 1580.0);
    assertThat(u).isCloseTo(Math.hypot(readings, background) / 2.5, within(1e-12));
  }

  @Test
  void a_reading_at_the_background_is_no_decay() {
    assertThatThrownBy(() -> TracerGas.airChangeOfDecayPerHour(2000, 420, 420, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("concentration must be above 420.0");
  }

  @Test
  void an_opening_without_area_has_no_pressure() {
    assertThatThrownBy(() -> new Orifice(0.61, 0).pressurePa(0.01, 1.2))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(new Orifice(0.61, 0).flowM3S(10, 1.2)).isZero();
  }

  @Test
  void temperatures_on_the_kelvin_scale_are_refused() {
    assertThatThrownBy(
            () ->
                Bs5925.crossStackM3S(
                    new Orifice(0.61, 1), 2, Temperature.celsius(20).kelvin(), 278.15))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("293.15");
  }
}
