package org.drysill.physics.moisture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.drysill.physics.Humidity;
import org.drysill.physics.Temperature;
import org.drysill.physics.air.AirState;
import org.drysill.physics.air.HumidityReference;
import org.drysill.physics.air.MoistAir;
import org.junit.jupiter.api.Test;

class MoistureTest {
  @Test
  void an_excess_at_a_limit_belongs_to_the_class_that_it_bounds() {
    assertThat(HumidityClass.of(270, 0)).contains(HumidityClass.CLASS_1);
    assertThat(HumidityClass.of(270.1, 0)).contains(HumidityClass.CLASS_2);
    assertThat(HumidityClass.of(1e6, 0)).contains(HumidityClass.CLASS_5);
    assertThat(HumidityClass.of(-50, 0)).contains(HumidityClass.CLASS_1);
  }

  @Test
  void warm_months_have_no_class() {
    assertThat(HumidityClass.of(100, 20)).isEmpty();
    assertThat(HumidityClass.of(0, 28)).isEmpty();
    assertThat(HumidityClass.of(1, 19.9)).isPresent();
  }

  @Test
  void the_wettest_class_has_no_upper_limit() {
    assertThat(HumidityClass.CLASS_5.upperLimitPa(0)).isEmpty();
    assertThat(HumidityClass.CLASS_5.upperLimitKgM3(25)).isEmpty();
  }

  @Test
  void no_flow_dries_with_air_as_moist_as_the_ceiling() {
    assertThat(VapourBalance.requiredFlowM3S(1e-5, 0.008, 0.008)).isEmpty();
    assertThat(VapourBalance.requiredFlowM3S(1e-5, 0.008, 0.009)).isEmpty();
  }

  @Test
  void a_drying_room_has_a_negative_production() {
    assertThat(VapourBalance.productionKgS(-0.001, 0.01)).isCloseTo(-1e-5, within(1e-18));
  }

  /**
   * The simple balance reads high by ve·(1 − ρi/ρe), ρ the densities of dry air indoors and out:
   * 6.8 % of ve for 0 and 20 °C by the temperatures, some tenths more by the vapour that takes its
   * place.
   */
  @Test
  void the_simple_balance_departs_from_the_exact_one_by_what_it_says() {
    double outdoorPressure = MoistAir.vapourPressurePa(0, 0.85);
    double production = 1e-4;
    double flow = 0.03;
    double ratio =
        VapourBalance.steadyHumidityRatio(
            MoistAir.humidityRatio(outdoorPressure, MoistAir.STANDARD_PRESSURE_PA),
            production,
            flow / MoistAir.specificVolumeM3Kg(20, 0.0065, MoistAir.STANDARD_PRESSURE_PA));
    double exact =
        MoistAir.vapourContentKgM3(
            20, MoistAir.vapourPressureOfRatioPa(ratio, MoistAir.STANDARD_PRESSURE_PA));
    double outdoor = MoistAir.vapourContentKgM3(0, outdoorPressure);
    double simple = outdoor + VapourBalance.excessKgM3(production, flow);
    assertThat(simple - exact).isBetween(0.068 * outdoor, 0.075 * outdoor);
  }

  @Test
  void without_flow_vapour_rises_in_a_straight_line() {
    TransientVapour sealed = new TransientVapour(50, 0, 1);
    assertThat(sealed.contentKgM3(0.005, 0.004, 1e-5, 3600)).isCloseTo(0.00572, within(1e-12));
  }

  @Test
  void air_quoted_over_water_is_turned_to_ice_once() {
    AirState frost =
        AirState.of(Temperature.celsius(-5), Humidity.percent(80), HumidityReference.OVER_WATER);
    assertThat(frost.humidity().ratio()).isCloseTo(0.84, within(0.002));
    assertThat(AirState.of(frost.temperature(), frost.humidity(), HumidityReference.OVER_ICE))
        .isEqualTo(frost);
  }

  /** Advice page (seen): 21 °C and 55 % have a dew point of 11.6 °C; 10.1 g/m³ by the gas law. */
  @Test
  void air_knows_its_dew_point_and_content() {
    AirState room = new AirState(Temperature.celsius(21), Humidity.percent(55));
    assertThat(room.dewPoint().celsius()).isCloseTo(11.6, within(0.1));
    assertThat(room.vapourContentKgM3()).isCloseTo(0.01007, within(0.00005));
  }
}
