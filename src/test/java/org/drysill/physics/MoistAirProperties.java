package org.drysill.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.air.WetBulb;

/** What must hold of moist air whatever the numbers. */
class MoistAirProperties {
  private static final double SEA_LEVEL = MoistAir.STANDARD_PRESSURE_PA;

  @Property
  void dew_point_undoes_saturation(
      @ForAll @Scale(9) @DoubleRange(min = -100, max = 100) double celsius) {
    double there = Iso13788Vapour.saturationPressurePa(celsius);
    assertThat(Iso13788Vapour.dewPointCelsius(there)).isCloseTo(celsius, within(1e-9));
  }

  @Property
  void warmer_air_can_hold_more(
      @ForAll @Scale(9) @DoubleRange(min = -100, max = 99) double celsius,
      @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 1) double step) {
    assertThat(Iso13788Vapour.saturationPressurePa(celsius + step))
        .isGreaterThan(Iso13788Vapour.saturationPressurePa(celsius));
  }

  @Property
  void water_below_0_holds_more_vapour_over_it_than_ice(
      @ForAll @Scale(9) @DoubleRange(min = -100, max = -0.01) double celsius) {
    assertThat(Iso13788Vapour.humidityOverIce(celsius, 0.5)).isGreaterThan(0.5);
  }

  @Property
  void dew_point_wet_bulb_and_dry_bulb_stand_in_that_order(
      @ForAll @Scale(9) @DoubleRange(min = -40, max = 60) double celsius,
      @ForAll @Scale(9) @DoubleRange(min = 0.02, max = 1) double humidity) {
    double dew = MoistAir.dewPointCelsius(celsius, humidity);
    double wet = WetBulb.celsius(celsius, humidity, SEA_LEVEL);
    assertThat(dew).isLessThanOrEqualTo(celsius + 1e-9);
    assertThat(wet).isLessThanOrEqualTo(celsius).isGreaterThanOrEqualTo(dew - 0.02);
  }

  @Property
  void humidity_comes_back_from_the_wet_bulb(
      @ForAll @Scale(9) @DoubleRange(min = 5, max = 50) double celsius,
      @ForAll @Scale(9) @DoubleRange(min = 0.3, max = 1) double humidity) {
    double wet = WetBulb.celsius(celsius, humidity, SEA_LEVEL);
    // Below 0 °C the two branches leave a gap in which a wet bulb of 0 °C stands for a span of air.
    double ratio = MoistAir.humidityRatio(MoistAir.vapourPressurePa(celsius, humidity), SEA_LEVEL);
    if (wet > 0.001) {
      assertThat(WetBulb.humidityRatio(celsius, wet, SEA_LEVEL)).isCloseTo(ratio, within(1e-12));
    }
  }

  @Property
  void content_pressure_and_ratio_are_one_vapour(
      @ForAll @Scale(9) @DoubleRange(min = -40, max = 60) double celsius,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double humidity) {
    double pressure = MoistAir.vapourPressurePa(celsius, humidity);
    double content = MoistAir.vapourContentKgM3(celsius, pressure);
    double ratio = MoistAir.humidityRatio(pressure, SEA_LEVEL);
    assertThat(MoistAir.vapourPressureOfContentPa(celsius, content))
        .isCloseTo(pressure, within(1e-8));
    assertThat(MoistAir.vapourPressureOfRatioPa(ratio, SEA_LEVEL))
        .isCloseTo(pressure, within(1e-8));
    assertThat(MoistAir.relativeHumidity(celsius, pressure)).isCloseTo(humidity, within(1e-12));
  }

  /**
   * Two ways to the vapour in a cubic metre, W by specific volume and p/(Rv·T): they differ by what
   * the printed gas constants differ.
   */
  @Property
  void vapour_content_agrees_with_ratio_by_volume(
      @ForAll @Scale(9) @DoubleRange(min = -20, max = 60) double celsius,
      @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 1) double humidity) {
    double pressure = MoistAir.vapourPressurePa(celsius, humidity);
    double ratio = MoistAir.humidityRatio(pressure, SEA_LEVEL);
    double byVolume = ratio / MoistAir.specificVolumeM3Kg(celsius, ratio, SEA_LEVEL);
    double content = MoistAir.vapourContentKgM3(celsius, pressure);
    assertThat(byVolume).isCloseTo(content, within(1e-4 * content));
  }

  @Property
  void vapour_makes_air_lighter(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 60) double celsius,
      @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 1) double humidity) {
    double ratio = MoistAir.humidityRatio(MoistAir.vapourPressurePa(celsius, humidity), SEA_LEVEL);
    assertThat(MoistAir.densityKgM3(celsius, ratio, SEA_LEVEL))
        .isLessThan(MoistAir.densityKgM3(celsius, 0, SEA_LEVEL));
  }
}
