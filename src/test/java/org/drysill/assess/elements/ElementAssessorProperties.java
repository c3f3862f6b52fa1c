package org.drysill.assess.elements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.elements.ElementFixtures.home;
import static org.drysill.assess.elements.ElementFixtures.vapour;
import static org.drysill.assess.elements.ElementFixtures.wall;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.drysill.physics.Range;

/** What must hold for any wall. */
class ElementAssessorProperties {
  private static final double SLACK = 1e-9;

  @Provide
  Arbitrary<List<String>> layers() {
    return Arbitraries.of(
            "{material: plasterboard, thickness: 12.5 mm}",
            "{material: mineral wool, thickness: 60 mm}",
            "{material: expanded polystyrene, thickness: 40 mm}",
            "{material: oriented strand board, thickness: 18 mm}",
            "{material: brick, thickness: 102 mm}",
            "{material: cement render, thickness: 20 mm}",
            "{material: bituminous paper}",
            "{material: air gap}")
        .list()
        .ofMinSize(1)
        .ofMaxSize(5);
  }

  @Property(tries = 60)
  void more_vapour_never_leaves_less_water(
      @ForAll("layers") List<String> layers,
      @ForAll @DoubleRange(min = 0, max = 1200) double excess,
      @ForAll @DoubleRange(min = 0, max = 400) double more) {
    WallYear less = year(0, excess, layers);
    WallYear moister = year(0, excess + more, layers);
    assertThat(moister.highest().likely()).isGreaterThanOrEqualTo(less.highest().likely() - SLACK);
    assertThat(moister.left().likely()).isGreaterThanOrEqualTo(less.left().likely() - SLACK);
    assertThat(moister.highest().value().high())
        .isGreaterThanOrEqualTo(less.highest().value().high() - SLACK);
  }

  @Property(tries = 60)
  void colder_outdoors_is_never_less_of_a_risk(
      @ForAll("layers") List<String> layers,
      @ForAll @DoubleRange(min = 100, max = 1000) double excess,
      @ForAll @DoubleRange(min = 0, max = 10) double colder) {
    assertThat(year(colder, excess, layers).likely())
        .isGreaterThanOrEqualTo(year(0, excess, layers).likely());
  }

  @Property(tries = 60)
  void a_control_layer_inside_never_adds_water(
      @ForAll("layers") List<String> layers,
      @ForAll @DoubleRange(min = 0, max = 1200) double excess) {
    WallWithin wall = wall(home(0, layers.toArray(String[]::new)), vapour(Range.exactly(excess)));
    wall.variants().stream()
        .filter(v -> v.kind() == VariantKind.CONTROL_LAYER)
        .forEach(
            v -> {
              assertThat(v.highest().likely())
                  .isLessThanOrEqualTo(wall.year().highest().likely() + SLACK);
              assertThat(v.likely()).isLessThanOrEqualTo(wall.year().likely());
            });
  }

  /** What a month begins with, and what settles less what dries, is what it ends with. */
  @Property(tries = 60)
  void water_is_conserved_and_lies_within_its_bounds(
      @ForAll("layers") List<String> layers,
      @ForAll @DoubleRange(min = 0, max = 1200) double excess) {
    WallYear year = year(0, excess, layers);
    double stored = 0;
    for (WaterMonth month : year.months()) {
      stored += month.settledKgM2() - month.driedKgM2();
      assertThat(month.storedKgM2().likely()).isCloseTo(stored, within(1e-9));
    }
    assertThat(year.left().likely()).isCloseTo(stored, within(1e-9));
    assertThat(year.best()).isLessThanOrEqualTo(year.likely());
    assertThat(year.worst()).isGreaterThanOrEqualTo(year.likely());
  }

  private static WallYear year(double colder, double excess, List<String> layers) {
    return wall(home(colder, layers.toArray(String[]::new)), vapour(Range.exactly(excess))).year();
  }
}
