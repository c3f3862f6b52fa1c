package org.drysill.physics.layers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.layers.Iso13788Element.Verdict;
import org.junit.jupiter.api.Test;

class Iso13788ElementTest {
  private static final Slice WOOL = Slice.of(0.1, 0.04, 1);
  private static final Slice BRICK = Slice.of(0.2, 0.8, 10);
  private static final Slice FOIL = new Slice(0, 1500);

  private static MonthClimate month(double outdoor, double excess) {
    double outdoorPa = MoistAir.vapourPressurePa(outdoor, 0.85);
    return new MonthClimate(20, outdoorPa + excess, outdoor, outdoorPa, 30);
  }

  /** Six months of winter with an excess of vapour indoors, six of summer without. */
  private static List<MonthClimate> year(double winter, double summer, double excess) {
    return IntStream.range(0, 12)
        .mapToObj(m -> m < 3 || m > 8 ? month(winter, excess) : month(summer, 0))
        .toList();
  }

  @Test
  void a_bare_brick_wall_stays_dry() {
    Element brick = Element.of(List.of(BRICK), 0.13, 0.04);
    Iso13788Element.Year year = Iso13788Element.year(brick, year(8, 16, 200));
    assertThat(year.verdict()).isEqualTo(Verdict.NONE);
    assertThat(year.highestKgM2()).isZero();
  }

  @Test
  void wool_inside_brick_wets_in_winter_and_dries_in_summer() {
    Element element = Element.of(List.of(WOOL, BRICK), 0.13, 0.04);
    Iso13788Element.Year year = Iso13788Element.year(element, year(0, 17, 400));
    assertThat(year.verdict()).isEqualTo(Verdict.DRIES);
    assertThat(year.first()).as("October").isEqualTo(9);
    assertThat(year.highestKgM2()).isPositive();
    assertThat(year.leftKgM2()).isZero();
  }

  @Test
  void a_tight_layer_outside_keeps_the_water_in() {
    Element element = Element.of(List.of(WOOL, FOIL), 0.13, 0.04);
    Iso13788Element.Year year = Iso13788Element.year(element, year(-5, 8, 600));
    assertThat(year.verdict()).isEqualTo(Verdict.ACCUMULATES);
    assertThat(year.leftKgM2()).isPositive();
  }

  @Test
  void where_every_month_wets_the_year_begins_with_the_first() {
    Element element = Element.of(List.of(WOOL, FOIL), 0.13, 0.04);
    Iso13788Element.Year year =
        Iso13788Element.year(element, Collections.nCopies(12, month(-5, 600)));
    assertThat(year.first()).isZero();
    assertThat(year.verdict()).isEqualTo(Verdict.ACCUMULATES);
  }

  @Test
  void two_tight_layers_make_two_wet_planes() {
    Element element = Element.of(List.of(WOOL, new Slice(0, 2), WOOL, FOIL), 0.13, 0.04);
    MonthWater water =
        Iso13788Element.month(element, month(-10, 900), new double[element.planes()]);
    long wet = IntStream.range(0, element.planes()).filter(k -> water.storedKgM2(k) > 0).count();
    assertThat(wet).isGreaterThanOrEqualTo(2);
  }

  /** Once a plane is dry within the month, the rest of the month takes nothing more from it. */
  @Test
  void a_plane_dries_to_nothing_and_no_further() {
    Element element = Element.of(List.of(WOOL, BRICK), 0.13, 0.04);
    double[] before = new double[element.planes()];
    before[10] = 1e-6;
    MonthWater water = Iso13788Element.month(element, month(17, 100), before);
    assertThat(water.storedKgM2(10)).isZero();
    assertThat(water.gainedKgM2(10)).isCloseTo(-1e-6, within(1e-18));
    assertThat(water.condensedKgM2()).isZero();
  }

  @Test
  void thick_layers_are_split_as_the_standard_asks() {
    assertThat(WOOL.split()).hasSize(10);
    assertThat(BRICK.split()).hasSize(1);
    assertThat(FOIL.split()).hasSize(1);
    assertThat(Element.of(List.of(WOOL, BRICK), 0.13, 0.04).planes()).isEqualTo(12);
  }

  @Test
  void refuses_what_is_no_element() {
    List<Slice> none = Collections.emptyList();
    assertThatThrownBy(() -> Element.of(none, 0.13, 0.04)).hasMessageContaining("layers");
    assertThatThrownBy(() -> new Slice(-1, 1)).hasMessageContaining("resistance");
    assertThatThrownBy(() -> new Slice(1, 0)).hasMessageContaining("sd");
    assertThatThrownBy(() -> Slice.of(0, 1, 1)).hasMessageContaining("thickness");
    assertThatThrownBy(() -> new MonthClimate(20, -1, 0, 500, 30)).hasMessageContaining("indoor");
    List<MonthClimate> one = List.of(month(0, 0));
    Element brick = Element.of(List.of(BRICK), 0.13, 0.04);
    assertThatThrownBy(() -> Iso13788Element.year(brick, one)).hasMessageContaining("months");
  }
}
