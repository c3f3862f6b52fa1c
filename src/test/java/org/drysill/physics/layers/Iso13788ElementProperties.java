package org.drysill.physics.layers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.drysill.physics.air.MoistAir;

/** What must hold for any element in any climate. */
class Iso13788ElementProperties {
  private static final double[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  @Provide
  Arbitrary<List<Slice>> layers() {
    Arbitrary<Slice> slice =
        Combinators.combine(
                Arbitraries.doubles().between(0, 3), Arbitraries.doubles().between(0.01, 60))
            .as(Slice::new);
    return slice.list().ofMinSize(1).ofMaxSize(5);
  }

  private static List<MonthClimate> climate(double coldest, double swing, double excessPa) {
    List<MonthClimate> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      double outdoor = coldest + swing * (1 - Math.cos(2 * Math.PI * m / 12)) / 2;
      double outdoorPa = MoistAir.vapourPressurePa(outdoor, 0.85);
      months.add(new MonthClimate(20, outdoorPa + excessPa, outdoor, outdoorPa, DAYS[m]));
    }
    return months;
  }

  @Property(tries = 300)
  void water_is_conserved(
      @ForAll("layers") List<Slice> layers,
      @ForAll @DoubleRange(min = -20, max = 10) double coldest,
      @ForAll @DoubleRange(min = 0, max = 25) double swing,
      @ForAll @DoubleRange(min = 0, max = 1500) double excess) {
    Element element = Element.of(layers, 0.13, 0.04);
    Iso13788Element.Year year = Iso13788Element.year(element, climate(coldest, swing, excess));
    for (int k = 0; k < element.planes(); k++) {
      int plane = k;
      double gained = year.months().stream().mapToDouble(m -> m.gainedKgM2(plane)).sum();
      assertThat(gained).isCloseTo(year.months().get(11).storedKgM2(plane), within(1e-9));
      assertThat(year.months()).allSatisfy(m -> assertThat(m.storedKgM2(plane)).isNotNegative());
    }
  }

  /** What comes in at one surface and goes not out at the other has settled in between. */
  @Property(tries = 300)
  void vapour_that_does_not_pass_has_settled(
      @ForAll("layers") List<Slice> layers,
      @ForAll @DoubleRange(min = -20, max = 15) double outdoor,
      @ForAll @DoubleRange(min = 0, max = 1500) double excess) {
    Element element = Element.of(layers, 0.13, 0.04);
    double outdoorPa = MoistAir.vapourPressurePa(outdoor, 0.8);
    MonthClimate month = new MonthClimate(20, outdoorPa + excess, outdoor, outdoorPa, 30);
    MonthWater water = Iso13788Element.month(element, month, new double[element.planes()]);
    int last = element.planes() - 1;
    double in = flow(element, water, 0, 1);
    double out = flow(element, water, last - 1, last);
    double settled =
        IntStream.range(0, element.planes()).mapToDouble(water.line()::rateKgM2S).sum();
    assertThat(settled).isCloseTo(in - out, within(1e-9 * (Math.abs(in) + Math.abs(out)) + 1e-18));
  }

  private static double flow(Element element, MonthWater water, int from, int to) {
    return VapourLine.AIR_PERMEABILITY
        * (water.line().pressurePa(from) - water.line().pressurePa(to))
        / (element.airLayerM(to) - element.airLayerM(from));
  }

  @Property(tries = 300)
  void the_line_never_lies_above_saturation(
      @ForAll("layers") List<Slice> layers,
      @ForAll @DoubleRange(min = -20, max = 15) double outdoor,
      @ForAll @DoubleRange(min = 0, max = 1500) double excess) {
    Element element = Element.of(layers, 0.13, 0.04);
    double outdoorPa = MoistAir.vapourPressurePa(outdoor, 0.8);
    MonthClimate month = new MonthClimate(20, outdoorPa + excess, outdoor, outdoorPa, 30);
    MonthWater water = Iso13788Element.month(element, month, new double[element.planes()]);
    for (int k = 0; k < element.planes(); k++) {
      assertThat(water.line().pressurePa(k))
          .isLessThanOrEqualTo(water.saturationPa(k) * (1 + 1e-12));
      assertThat(water.line().rateKgM2S(k)).isGreaterThanOrEqualTo(-1e-24);
    }
  }

  @Property(tries = 200)
  void moister_rooms_never_leave_less_water(
      @ForAll("layers") List<Slice> layers,
      @ForAll @DoubleRange(min = -15, max = 5) double coldest,
      @ForAll @DoubleRange(min = 0, max = 800) double excess,
      @ForAll @DoubleRange(min = 0, max = 600) double more) {
    Element element = Element.of(layers, 0.13, 0.04);
    double outdoorPa = MoistAir.vapourPressurePa(coldest, 0.85);
    double[] dry = new double[element.planes()];
    MonthClimate less = new MonthClimate(20, outdoorPa + excess, coldest, outdoorPa, 31);
    MonthClimate moist = new MonthClimate(20, outdoorPa + excess + more, coldest, outdoorPa, 31);
    assertThat(Iso13788Element.month(element, moist, dry).storedKgM2())
        .isGreaterThanOrEqualTo(Iso13788Element.month(element, less, dry).storedKgM2() - 1e-12);
  }

  /** A tighter layer on the warm side, all else equal: the purpose of a vapour control layer. */
  @Property(tries = 200)
  void a_tighter_inner_layer_never_adds_water(
      @ForAll("layers") List<Slice> layers,
      @ForAll @DoubleRange(min = -15, max = 5) double coldest,
      @ForAll @DoubleRange(min = 0.1, max = 50) double tight,
      @ForAll @DoubleRange(min = 0, max = 50) double tighter) {
    double outdoorPa = MoistAir.vapourPressurePa(coldest, 0.85);
    MonthClimate month = new MonthClimate(20, outdoorPa + 600, coldest, outdoorPa, 31);
    assertThat(stored(layers, tight + tighter, month))
        .isLessThanOrEqualTo(stored(layers, tight, month) + 1e-12);
  }

  private static double stored(List<Slice> layers, double tight, MonthClimate month) {
    List<Slice> all = new ArrayList<>(layers);
    all.add(0, new Slice(0, tight));
    Element element = Element.of(all, 0.13, 0.04);
    return Iso13788Element.month(element, month, new double[element.planes()]).storedKgM2();
  }

  @Property(tries = 100)
  void temperatures_fall_from_room_to_outside(
      @ForAll("layers") List<Slice> layers,
      @ForAll @DoubleRange(min = -20, max = 15) double outdoor) {
    Element element = Element.of(layers, 0.13, 0.04);
    for (int k = 1; k < element.planes(); k++) {
      assertThat(element.celsius(k, 20, outdoor))
          .isLessThanOrEqualTo(element.celsius(k - 1, 20, outdoor))
          .isBetween(outdoor, 20.0);
    }
  }
}
