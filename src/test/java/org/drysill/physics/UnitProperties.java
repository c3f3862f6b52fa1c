package org.drysill.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Whatever the unit, it is the same temperature, humidity, flow. */
class UnitProperties {
  @Property
  void a_flow_is_the_same_in_every_unit(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 10) double m3s) {
    Airflow flow = Airflow.m3PerSecond(m3s);
    double room = 1e-12 * (1 + m3s);
    assertThat(Airflow.litresPerSecond(flow.litresPerSecond()).m3PerSecond())
        .isCloseTo(m3s, within(room));
    assertThat(Airflow.m3PerHour(flow.m3PerHour()).m3PerSecond()).isCloseTo(m3s, within(room));
    assertThat(Airflow.cubicFeetPerMinute(flow.cubicFeetPerMinute()).m3PerSecond())
        .isCloseTo(m3s, within(room));
  }

  @Property
  void air_change_and_flow_undo_each_other(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 20) double perHour,
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 1000) double volume) {
    assertThat(Airflow.ofAirChange(perHour, volume).airChangePerHour(volume))
        .isCloseTo(perHour, within(1e-12 * (1 + perHour)));
  }

  @Property
  void a_difference_of_temperatures_is_the_same_on_both_scales(
      @ForAll @Scale(9) @DoubleRange(min = -60, max = 60) double a,
      @ForAll @Scale(9) @DoubleRange(min = -60, max = 60) double b) {
    Temperature one = Temperature.celsius(a);
    Temperature other = Temperature.celsius(b);
    assertThat(one.minus(other)).isCloseTo(one.kelvin() - other.kelvin(), within(1e-9));
    assertThat(other.plusKelvin(one.minus(other)).celsius()).isCloseTo(a, within(1e-9));
    assertThat(Temperature.kelvin(one.kelvin()).celsius()).isCloseTo(a, within(1e-9));
  }

  @Property
  void a_temperature_ratio_does_not_depend_on_the_scale(
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 40) double difference,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double ratio,
      @ForAll @Scale(9) @DoubleRange(min = -20, max = 20) double cold) {
    double judged = cold + ratio * difference;
    assertThat(TemperatureRatio.of(judged, cold + difference, cold)).isCloseTo(ratio, within(1e-9));
    assertThat(
            TemperatureRatio.of(judged * 1.8 + 32, (cold + difference) * 1.8 + 32, cold * 1.8 + 32))
        .isCloseTo(ratio, within(1e-9));
  }

  /** The propagated uncertainty against differences of the ratio itself, one reading at a time. */
  @Property
  void uncertainty_is_what_small_errors_do(
      @ForAll @Scale(9) @DoubleRange(min = 5, max = 30) double difference,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double ratio) {
    double step = 1e-4;
    double judged = ratio * difference;
    double byJudged = change(judged + step, difference, 0, ratio);
    double byWarm = change(judged, difference + step, 0, ratio);
    double byCold = change(judged, difference, step, ratio);
    double numeric = Math.sqrt(byJudged * byJudged + byWarm * byWarm + byCold * byCold);
    assertThat(TemperatureRatio.uncertainty(ratio, difference, step, step, step))
        .isCloseTo(numeric, within(1e-3 * numeric));
  }

  private static double change(double judged, double warm, double cold, double ratio) {
    return TemperatureRatio.of(judged, warm, cold) - ratio;
  }
}
