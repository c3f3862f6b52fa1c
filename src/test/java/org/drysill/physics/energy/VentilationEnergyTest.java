package org.drysill.physics.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VentilationEnergyTest {
  /** A heated month counts up to the indoor temperature, one as warm as the base not at all. */
  @Test
  void months_as_warm_as_the_base_count_nothing_and_others_up_to_the_indoor_temperature() {
    List<DegreeDays.Month> months =
        List.of(
            new DegreeDays.Month(5, 31),
            new DegreeDays.Month(15, 30),
            new DegreeDays.Month(18, 30));
    assertThat(DegreeDays.ofHeatedMonths(months, 19, 15)).isCloseTo(14 * 31, within(1e-9));
    assertThatThrownBy(() -> DegreeDays.ofHeatedMonths(months, 14, 15))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /**
   * A home of 200 W/K at 20 °C with 600 W of free heat, outdoors 5 °C: it is heated with 200 · 15 −
   * 600 = 2400 W. With 34 W/K more it takes 234 · 15 − 600 = 2910 W: 510 W, 34 W/K times all 15 K.
   */
  @Test
  void what_is_added_to_the_losses_of_a_heated_home_is_warmed_up_to_the_indoor_temperature() {
    double days = 31;
    double added = (234 * 15 - 600) - (200 * 15 - 600);
    assertThat(
            VentilationHeat.heatKwh(
                34,
                DegreeDays.ofHeatedMonths(
                    List.of(new DegreeDays.Month(5, days)), 20, 20 - 600 / 200.0)))
        .isCloseTo(added * days * 24 / 1000, within(1e-9));
  }

  /** Convention of EN ISO 13789: 100 m³/h lose 34 W/K. */
  @Test
  void the_usual_heat_capacity_is_a_third_of_a_watt_hour() {
    assertThat(
            VentilationHeat.lossCoefficientWK(100.0 / 3600, VentilationHeat.USUAL_CAPACITY_J_M3K))
        .isCloseTo(34, within(1e-9));
  }

  /** CIBSE TM41:2006, Hitchin's k = 0.71 for the United Kingdom (memory): at the base it is d/k. */
  @Test
  void hitchin_counts_cold_days_in_a_month_whose_mean_is_the_base() {
    assertThat(DegreeDays.hitchin(15.5, 30, 15.5, 0.71)).isCloseTo(30 / 0.71, within(1e-9));
    assertThat(DegreeDays.hitchin(15.5 - 1e-9, 30, 15.5, 0.71)).isCloseTo(30 / 0.71, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"4.5, 31", "10.9, 31", "16.6, 31", "25, 31"})
  void hitchin_never_gives_less_than_the_mean_alone(double mean, double days) {
    double alone = Math.max(0, 15.5 - mean) * days;
    assertThat(DegreeDays.hitchin(mean, days, 15.5, 0.71)).isGreaterThanOrEqualTo(alone);
  }

  @Test
  void hitchin_goes_to_the_mean_in_a_cold_month_and_to_nothing_in_a_hot_one() {
    assertThat(DegreeDays.hitchin(-20, 31, 15.5, 0.71)).isCloseTo(35.5 * 31, within(1e-6));
    assertThat(DegreeDays.hitchin(60, 31, 15.5, 0.71)).isCloseTo(0, within(1e-9)).isNotNegative();
  }

  @Test
  void hours_above_the_base_take_nothing_back() {
    assertThat(DegreeDays.ofHours(DoubleStream.of(5.5, 40), 15.5))
        .isCloseTo(10 / 24.0, within(1e-12));
    assertThatThrownBy(() -> DegreeDays.ofHours(DoubleStream.of(5, Double.NaN), 15.5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("outdoor temperature");
  }

  /** 3 W for a year is 26 kWh, 30 W is 263 kWh (arithmetic). */
  @ParameterizedTest
  @CsvSource({"3, 26.28", "30, 262.8"})
  void a_fan_that_always_runs(double watt, double kwh) {
    assertThat(FanEnergy.electricityKwh(watt, 8760)).isCloseTo(kwh, within(1e-9));
  }

  @Test
  void specific_power_and_flow_give_power_back() {
    assertThat(FanEnergy.powerW(FanEnergy.specificFanPower(15, 0.03), 0.03))
        .isCloseTo(15, within(1e-12));
  }

  /** Steam tables (memory): 2501 kJ/kg at 0 °C, 2453.5 at 20 °C, 2406.0 at 40 °C, within 0.1 %. */
  @ParameterizedTest
  @CsvSource({"0, 2500900", "20, 2453500", "40, 2406000"})
  void evaporation_takes_what_steam_tables_say(double celsius, double joule) {
    assertThat(LatentHeat.vaporisationJKg(celsius)).isCloseTo(joule, within(0.001 * joule));
  }
}
