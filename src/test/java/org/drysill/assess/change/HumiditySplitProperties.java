package org.drysill.assess.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.drysill.physics.air.Iso13788Vapour;

class HumiditySplitProperties {
  private static double saturation(double celsius) {
    return Iso13788Vapour.saturationPressureOverWaterPa(celsius);
  }

  @Property
  void the_parts_are_the_whole_change(
      @ForAll @DoubleRange(min = -5, max = 35) double before,
      @ForAll @DoubleRange(min = -5, max = 35) double after,
      @ForAll @DoubleRange(min = 0.01, max = 1) double damp,
      @ForAll @DoubleRange(min = 0.01, max = 1) double dry) {
    HumiditySplit split =
        HumiditySplit.of(before, damp * saturation(before), after, dry * saturation(after));
    assertThat(split.fromTemperature() + split.fromMoisture()).isCloseTo(dry - damp, within(1e-12));
  }

  @Property
  void the_way_back_is_the_way_there_reversed(
      @ForAll @DoubleRange(min = -5, max = 35) double before,
      @ForAll @DoubleRange(min = -5, max = 35) double after,
      @ForAll @DoubleRange(min = 50, max = 3000) double first,
      @ForAll @DoubleRange(min = 50, max = 3000) double second) {
    HumiditySplit there = HumiditySplit.of(before, first, after, second);
    HumiditySplit back = HumiditySplit.of(after, second, before, first);
    assertThat(back.fromTemperature()).isCloseTo(-there.fromTemperature(), within(1e-12));
    assertThat(back.fromMoisture()).isCloseTo(-there.fromMoisture(), within(1e-12));
  }

  @Property
  void warming_never_raises_and_water_never_lowers(
      @ForAll @DoubleRange(min = -5, max = 30) double celsius,
      @ForAll @DoubleRange(min = 0, max = 5) double warmer,
      @ForAll @DoubleRange(min = 50, max = 2000) double pascal,
      @ForAll @DoubleRange(min = 0, max = 1000) double more) {
    HumiditySplit split = HumiditySplit.of(celsius, pascal, celsius + warmer, pascal + more);
    assertThat(split.fromTemperature()).isLessThanOrEqualTo(0);
    assertThat(split.fromMoisture()).isGreaterThanOrEqualTo(0);
  }
}
