package org.drysill.assess.change.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.drysill.physics.Range;

class HumiditySplitProperties {
  @Provide
  Arbitrary<SplitAir> airs() {
    return Combinators.combine(
            Arbitraries.doubles().between(-5, 35),
            Arbitraries.doubles().between(0.01, 1),
            Arbitraries.doubles().between(50, 3000))
        .as(SplitAir::new);
  }

  @Property
  void the_parts_are_the_whole_change(
      @ForAll("airs") SplitAir before, @ForAll("airs") SplitAir after) {
    HumiditySplit split = HumiditySplit.of(before, after);
    assertThat(split.fromTemperature() + split.fromOutdoors() + split.fromIndoors())
        .isCloseTo(after.humidity() - before.humidity(), within(1e-11));
  }

  /** The closed form against the definition: all six orders in which three things can change. */
  @Property
  void each_part_is_its_mean_over_all_orders(
      @ForAll("airs") SplitAir before, @ForAll("airs") SplitAir after) {
    double[] mean = new double[3];
    for (List<Integer> order :
        List.of(
            List.of(0, 1, 2),
            List.of(0, 2, 1),
            List.of(1, 0, 2),
            List.of(1, 2, 0),
            List.of(2, 0, 1),
            List.of(2, 1, 0))) {
      double[] state = {before.celsius(), before.outdoorPa(), before.excess()};
      double[] end = {after.celsius(), after.outdoorPa(), after.excess()};
      for (int factor : order) {
        double was = humidity(state);
        state[factor] = end[factor];
        mean[factor] += (humidity(state) - was) / 6;
      }
    }
    HumiditySplit split = HumiditySplit.of(before, after);
    assertThat(split.fromTemperature()).isCloseTo(mean[0], within(1e-10));
    assertThat(split.fromOutdoors()).isCloseTo(mean[1], within(1e-10));
    assertThat(split.fromIndoors()).isCloseTo(mean[2], within(1e-10));
  }

  private static double humidity(double... state) {
    return (state[1] + state[2]) * new SplitAir(state[0], 1, 0).perPascal();
  }

  @Property
  void the_way_back_is_the_way_there_reversed(
      @ForAll("airs") SplitAir before, @ForAll("airs") SplitAir after) {
    HumiditySplit there = HumiditySplit.of(before, after);
    HumiditySplit back = HumiditySplit.of(after, before);
    assertThat(back.fromTemperature()).isCloseTo(-there.fromTemperature(), within(1e-12));
    assertThat(back.fromOutdoors()).isCloseTo(-there.fromOutdoors(), within(1e-12));
    assertThat(back.fromIndoors()).isCloseTo(-there.fromIndoors(), within(1e-12));
  }

  @Property
  void nothing_changes_in_the_same_air(@ForAll("airs") SplitAir air) {
    assertThat(HumiditySplit.of(air, air)).isEqualTo(new HumiditySplit(0, 0, 0));
  }

  @Property
  void warming_never_raises_and_water_never_lowers(
      @ForAll("airs") SplitAir air,
      @ForAll @DoubleRange(min = 0, max = 5) double warmer,
      @ForAll @DoubleRange(min = 0, max = 1000) double more) {
    SplitAir warm = air.warmerBy(warmer);
    SplitAir damper =
        new SplitAir(warm.celsius(), (air.pressure() + more) * warm.perPascal(), air.outdoorPa());
    HumiditySplit split = HumiditySplit.of(air, damper);
    assertThat(split.fromTemperature()).isLessThanOrEqualTo(0);
    assertThat(split.fromIndoors()).isGreaterThanOrEqualTo(-1e-12);
    assertThat(split.fromOutdoors()).isZero();
  }

  /** Errors of readings widen every part, and more error widens it more. */
  @Property
  void bounds_grow_with_the_errors(
      @ForAll("airs") SplitAir before,
      @ForAll("airs") SplitAir after,
      @ForAll @DoubleRange(min = 0.1, max = 1) double kelvin) {
    double narrow = width(state(before, kelvin), state(after, kelvin));
    double wide = width(state(before, 2 * kelvin), state(after, 2 * kelvin));
    assertThat(width(state(before, 0), state(after, 0))).isZero();
    assertThat(narrow).isPositive();
    assertThat(wide).isGreaterThan(narrow);
  }

  private static double width(AirState before, AirState after) {
    Range part = HumiditySplit.bounded(HumiditySplit::fromTemperature, before, after);
    return part.high() - part.low();
  }

  private static AirState state(SplitAir air, double kelvin) {
    return new AirState(
        Spell.readings(),
        Range.around(air.celsius(), kelvin),
        Range.exactly(air.humidity()),
        Range.exactly(air.excess()),
        Range.exactly(0),
        Range.exactly(5),
        Range.exactly(air.outdoorPa()),
        true);
  }
}
