package org.drysill.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleConsumer;
import java.util.stream.Stream;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.air.StandardAtmosphere;
import org.drysill.physics.air.WetBulb;
import org.drysill.physics.moisture.HumidityClass;
import org.drysill.physics.surface.GlassCondensate;
import org.drysill.physics.surface.Iso13788Surface;
import org.drysill.physics.surface.TemperatureFactor;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ValuesTest {
  static Stream<Named<DoubleConsumer>> functions() {
    return Stream.of(
        Named.of("temperature", Temperature::celsius),
        Named.of("humidity", Humidity::ratio),
        Named.of("air flow", Airflow::m3PerSecond),
        Named.of("air change", x -> Airflow.ofAirChange(x, 100)),
        Named.of("volume", x -> Airflow.m3PerHour(10).airChangePerHour(x)),
        Named.of("saturation", Iso13788Vapour::saturationPressurePa),
        Named.of("saturation over water", Iso13788Vapour::saturationPressureOverWaterPa),
        Named.of("dew point", Iso13788Vapour::dewPointCelsius),
        Named.of("vapour pressure", x -> MoistAir.vapourPressurePa(20, x)),
        Named.of("content", x -> MoistAir.vapourContentKgM3(20, x)),
        Named.of("temperature of content", x -> MoistAir.vapourContentKgM3(x, 1000)),
        Named.of("humidity ratio", x -> MoistAir.humidityRatio(x, 101325)),
        Named.of("total pressure", x -> MoistAir.humidityRatio(1000, x)),
        Named.of("enthalpy", x -> MoistAir.enthalpyJKg(20, x)),
        Named.of("wet bulb", x -> WetBulb.humidityRatio(20, x, 101325)),
        Named.of("height", StandardAtmosphere::pressurePa),
        Named.of("class", x -> HumidityClass.of(x, 0)),
        Named.of("outdoors of class", x -> HumidityClass.of(100, x)),
        Named.of("surface", x -> Iso13788Surface.humidity(1000, x)),
        Named.of("factor", x -> TemperatureFactor.fromTemperatures(x, 20, 0)),
        Named.of("surface temperature", x -> TemperatureFactor.surfaceCelsius(x, 20, 0)),
        Named.of("convection", GlassCondensate::naturalConvection),
        Named.of("finite", x -> Bounds.finite("x", x)));
  }

  @ParameterizedTest
  @MethodSource("functions")
  void what_is_not_a_number_is_refused_by_name(DoubleConsumer function) {
    for (double x : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> function.accept(x))
          .withMessageContaining("was " + x);
    }
  }

  @Test
  void a_refusal_names_argument_value_and_bound() {
    assertThatThrownBy(() -> Iso13788Vapour.saturationPressurePa(293.15))
        .hasMessage("temperature [°C] must be from -100.0 to 100.0 but was 293.15");
    assertThatThrownBy(() -> Humidity.ratio(62))
        .hasMessage("relative humidity [ratio] must be from 0.0 to 1.5 but was 62.0");
    assertThatThrownBy(() -> Airflow.litresPerSecond(-1))
        .hasMessageContaining("air flow [m³/s] must be at least 0.0");
    assertThatThrownBy(() -> Airflow.m3PerHour(1).airChangePerHour(0))
        .hasMessageContaining("volume [m³] must be above 0.0");
    assertThatThrownBy(() -> MoistAir.humidityRatio(95000, 101325))
        .hasMessageContaining("vapour pressure [Pa]");
  }

  @Test
  void dry_air_has_no_dew_point() {
    assertThatThrownBy(() -> MoistAir.dewPointCelsius(20, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("vapour pressure [Pa]");
  }

  @Test
  void air_that_would_hold_less_than_no_vapour_is_refused() {
    assertThatThrownBy(() -> WetBulb.humidityRatio(40, 5, 101325))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("humidity ratio of the two bulbs");
  }

  @Test
  void saturated_air_has_its_own_temperature_for_a_wet_bulb() {
    assertThat(WetBulb.celsius(15, 1, 101325)).isCloseTo(15, within(1e-9));
    assertThat(WetBulb.celsius(-5, 1.05, 101325)).isCloseTo(-5, within(1e-9));
  }

  /** A point is a difference of percentages: 60 % is 10 points above 50 %, and 20 % more. */
  @Test
  void humidity_counts_points() {
    assertThat(Humidity.percent(60).pointsAbove(Humidity.percent(50))).isCloseTo(10, within(1e-12));
    assertThat(Humidity.percent(60).percent()).isEqualTo(60);
    assertThat(Humidity.percent(60)).isGreaterThan(Humidity.percent(50));
  }

  /** 1 cfm is 0.471947 l/s (NIST SP 811; memory). */
  @Test
  void a_cubic_foot_a_minute_is_half_a_litre_a_second() {
    assertThat(Airflow.cubicFeetPerMinute(1).litresPerSecond()).isCloseTo(0.4719474, within(1e-7));
  }

  @Test
  void flows_and_temperatures_have_an_order_and_a_sum() {
    Airflow sum = Airflow.litresPerSecond(6).plus(Airflow.litresPerSecond(4));
    assertThat(sum.litresPerSecond()).isCloseTo(10, within(1e-12));
    assertThat(sum).isGreaterThan(Airflow.litresPerSecond(9));
    assertThat(Temperature.celsius(4)).isLessThan(Temperature.celsius(5));
    assertThat(Temperature.kelvin(273.15).celsius()).isZero();
  }

  @Test
  void a_range_keeps_its_order() {
    Range range = new Range(1, 2, 4);
    assertThat(range.minus(new Range(0, 1, 2))).isEqualTo(new Range(-1, 1, 4));
    assertThat(range.plus(Range.exactly(1))).isEqualTo(new Range(2, 3, 5));
    assertThat(range.times(-1)).isEqualTo(new Range(-4, -2, -1));
    assertThat(range.times(2)).isEqualTo(new Range(2, 4, 8));
    assertThat(range.times(new Range(1, 2, 3))).isEqualTo(new Range(1, 4, 12));
    assertThat(range.dividedBy(new Range(1, 2, 4))).isEqualTo(new Range(0.25, 1, 4));
    assertThat(Range.around(5, 1)).isEqualTo(new Range(4, 5, 6));
    assertThat(range.isSpread()).isTrue();
    assertThat(Range.exactly(1).isSpread()).isFalse();
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(2, 1, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(1, 3, 2));
    assertThatIllegalArgumentException().isThrownBy(() -> Range.exactly(Double.NaN));
  }
}
