package org.drysill.assess.elements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drysill.assess.elements.ElementFixtures.BOARD;
import static org.drysill.assess.elements.ElementFixtures.BRICK;
import static org.drysill.assess.elements.ElementFixtures.WOOL;
import static org.drysill.assess.elements.ElementFixtures.assess;
import static org.drysill.assess.elements.ElementFixtures.home;
import static org.drysill.assess.elements.ElementFixtures.vapour;
import static org.drysill.assess.elements.ElementFixtures.wall;

import java.util.List;
import java.util.stream.Stream;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.surfaces.IndoorVapours;
import org.drysill.physics.Range;
import org.drysill.physics.layers.Iso13788Element;
import org.junit.jupiter.api.Test;

class ElementFiguresTest {
  @Test
  void every_figure_can_be_followed() {
    WallWithin wall = wall(BOARD, WOOL, "{material: foil}", BRICK);
    List<Figure> figures =
        Stream.of(
                Stream.of(wall.uValue(), wall.year().highest(), wall.year().left()),
                wall.year().settling().stream(),
                wall.dryBelow().stream(),
                wall.leakingAir().stream(),
                wall.findings().stream().flatMap(f -> f.required().stream()),
                wall.variants().stream()
                    .flatMap(v -> Stream.of(v.changed(), v.highest(), v.left())))
            .flatMap(s -> s)
            .toList();
    assertThat(figures).hasSizeGreaterThan(14);
    assertThat(figures).allMatch(f -> !f.working().formula().isBlank());
    assertThat(figures).allMatch(f -> !f.working().sources().isEmpty());
    assertThat(wall.year().left().working().note().orElseThrow())
        .startsWith("From a dry wall, in kg/m²: ")
        .contains("January +", "July −");
  }

  /**
   * What a wall bears is a bound only if nothing settles below it in any case within the ranges of
   * its layers, and something does above: asked at a moisture at which no case is wet, so that none
   * is the wettest.
   */
  @Test
  void the_moisture_that_a_wall_bears_holds_for_every_case_of_its_layers() {
    String[] layers = {
      "{material: plaster, thickness: 13 mm}",
      WOOL,
      "{material: wood fibre, thickness: 60 mm}",
      BRICK
    };
    Range bears = wall(home(8, layers), vapour(Range.exactly(1))).dryBelow().orElseThrow().value();
    assertThat(worst(bears.low() - 1, layers)).isEqualTo(Iso13788Element.Verdict.NONE);
    assertThat(worst(bears.low() + 1, layers)).isNotEqualTo(Iso13788Element.Verdict.NONE);
  }

  private static Iso13788Element.Verdict worst(double excess, String... layers) {
    return wall(home(8, layers), vapour(Range.exactly(excess))).year().worst();
  }

  /** A tenth of a pascal above what keeps it dry: some hundredths of a gram. */
  @Test
  void water_that_does_not_show_in_three_digits_is_no_list_of_noughts() {
    String[] layers = {BOARD, WOOL, "{material: foil}", BRICK};
    double dry = wall(layers).dryBelow().orElseThrow().likely();
    WallYear year = wall(home(0, layers), vapour(Range.exactly(dry + 0.1))).year();
    assertThat(year.highest().likely()).isBetween(1e-9, 5e-4);
    assertThat(year.highest().working().note().orElseThrow())
        .startsWith("From a dry wall less than 0.001 kg/m² settles in any month.");
  }

  @Test
  void masonry_on_both_sides_takes_the_water_up() {
    Finding content =
        wall(home(8, "{material: plaster, thickness: 13 mm}", BRICK), vapour(Range.exactly(1600)))
            .content()
            .orElseThrow();
    assertThat(content.required().orElseThrow().likely()).isEqualTo(1.0);
    assertThat(content.because()).startsWith("The layers beside the water take it up");
    assertThat(content.required().orElseThrow().working().sources()).hasSize(1);
  }

  @Test
  void water_may_settle_within_a_layer_and_between_two() {
    WallYear year =
        wall(
                home(
                    12,
                    "{material: mineral wool, thickness: 100 mm}",
                    "{material: bituminous paper}",
                    "{material: mineral wool, thickness: 100 mm}",
                    "{material: foil}"),
                vapour(Range.exactly(1200)))
            .year();
    assertThat(year.wet())
        .extracting(WetPlace::where)
        .contains("between the inner mineral wool and the bituminous paper");
    assertThat(YearWords.because(year)).contains(" and between ");
    assertThat(year.settling().orElseThrow().working().inputs()).hasSize(7);
    String wool = "{material: mineral wool, thickness: 100 mm}";
    WallYear fog = wall(home(15, wool), vapour(Range.exactly(2300))).year();
    assertThat(fog.wet()).extracting(WetPlace::where).containsExactly("within the mineral wool");
    assertThat(fog.settling().orElseThrow().working().inputs()).hasSize(7);
  }

  @Test
  void changes_say_whether_they_help() {
    assertThat(VariantKind.values())
        .allMatch(k -> k.helps() != (k == VariantKind.MOISTER_AIR))
        .allMatch(k -> !k.words().isBlank());
    assertThat(assess(home(0, BOARD, WOOL, BRICK), IndoorVapours.none()).findings()).hasSize(2);
  }
}
