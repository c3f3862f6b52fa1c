package org.drysill.assess.elements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.elements.ElementFixtures.BOARD;
import static org.drysill.assess.elements.ElementFixtures.BRICK;
import static org.drysill.assess.elements.ElementFixtures.CONTROL;
import static org.drysill.assess.elements.ElementFixtures.WOOL;
import static org.drysill.assess.elements.ElementFixtures.assess;
import static org.drysill.assess.elements.ElementFixtures.home;
import static org.drysill.assess.elements.ElementFixtures.vapour;
import static org.drysill.assess.elements.ElementFixtures.wall;

import java.util.List;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Verdict;
import org.drysill.assess.surfaces.IndoorVapours;
import org.drysill.physics.Range;
import org.drysill.physics.layers.Iso13788Element;
import org.junit.jupiter.api.Test;

class ElementAssessorTest {
  private static final String FOIL = "{material: foil}";

  /**
   * The worked example of the method, by an independent program on an invented climate (not
   * published): without a vapour control layer 0.595 kg/m² in November, 3.819 at the end of April,
   * dry in August; with one of 2 m 0.0275 in January, dry in March.
   */
  @Test
  void the_worked_example_comes_out_month_by_month() {
    WallYear without = wall(BOARD, WOOL, BRICK).year();
    assertThat(without.likely()).isEqualTo(Iso13788Element.Verdict.DRIES);
    assertThat(without.months().get(0).month()).isEqualTo(11);
    assertThat(without.months().get(0).settledKgM2()).isCloseTo(0.595, within(0.001));
    assertThat(without.months().get(5).storedKgM2().likely()).isCloseTo(3.819, within(0.001));
    assertThat(without.highest().likely()).isCloseTo(3.819, within(0.001));
    assertThat(YearWords.dryFrom(without)).isEqualTo(8);
    WallYear with = wall(BOARD, CONTROL, WOOL, BRICK).year();
    assertThat(with.highest().likely()).isCloseTo(0.0275, within(0.0002));
    assertThat(YearWords.dryFrom(with)).isEqualTo(3);
  }

  /** U = 1 / 1.9278 = 0.5187 W/(m²·K), arithmetic. */
  @Test
  void the_u_value_follows_from_films_and_layers() {
    Figure u = wall(BOARD, CONTROL, WOOL, BRICK).uValue();
    assertThat(u.likely()).isCloseTo(0.5187, within(0.0001));
    assertThat(u.value().isSpread()).isFalse();
    assertThat(u.working().inputs()).hasSize(6);
    assertThat(u.working().sources()).hasSize(3);
  }

  @Test
  void water_that_dries_is_told_with_its_place_and_months() {
    WallWithin wall = wall(BOARD, WOOL, BRICK);
    assertThat(wall.year().wet())
        .extracting(WetPlace::where)
        .containsExactly("between the mineral wool and the brick");
    assertThat(wall.accumulation().verdict()).isEqualTo(Verdict.MEETS);
    assertThat(wall.accumulation().because())
        .isEqualTo(
            "Water settles between the mineral wool and the brick (November to April) and has"
                + " dried by August. It dries at the unfavourable ends of all ranges too.");
    assertThat(wall.accumulation().settledBy()).isEmpty();
    assertThat(wall.content().orElseThrow().verdict()).isEqualTo(Verdict.SHORT);
    assertThat(wall.content().orElseThrow().required().orElseThrow().likely()).isEqualTo(0.5);
    assertThat(wall.content().orElseThrow().because()).contains("takes up none").contains("Timber");
  }

  @Test
  void a_wall_that_stays_dry_has_no_content_to_compare() {
    WallWithin wall = wall(BRICK, "{material: cavity, thickness: 50 mm}");
    assertThat(wall.year().worst()).isEqualTo(Iso13788Element.Verdict.NONE);
    assertThat(wall.content()).isEmpty();
    assertThat(wall.accumulation().verdict()).isEqualTo(Verdict.MEETS);
    assertThat(wall.accumulation().because()).startsWith("No water settles in any month");
    assertThat(wall.year().settling()).isEmpty();
    assertThat(wall.leakingAir()).isEmpty();
    assertThat(wall.year().highest().working().note().orElseThrow())
        .startsWith("At the likely values no water settles");
  }

  @Test
  void foil_on_the_cold_side_keeps_the_water_for_good() {
    WallWithin wall = wall(BOARD, WOOL, FOIL, BRICK);
    assertThat(wall.accumulation().verdict()).isEqualTo(Verdict.SHORT);
    assertThat(wall.accumulation().because())
        .isEqualTo(
            "Water stays between the mineral wool and the aluminium foil from year to year, even at"
                + " the favourable ends of all ranges.");
    assertThat(wall.variants())
        .extracting(WallVariant::kind)
        .containsExactly(
            VariantKind.SHEET_MOVED, VariantKind.SHEET_REMOVED, VariantKind.MOISTER_AIR);
    assertThat(wall.variants().get(0).worst()).isEqualTo(Iso13788Element.Verdict.NONE);
    assertThat(wall.variants().get(1).likely()).isEqualTo(Iso13788Element.Verdict.DRIES);
    assertThat(wall.content().orElseThrow().because()).contains("grows from year to year");
  }

  @Test
  void wide_ranges_leave_it_open_and_name_what_would_settle_it() {
    WallWithin wall = wall(BOARD, WOOL, "{material: bituminous paper, sd: 0.5..200 m}", BRICK);
    assertThat(wall.accumulation().verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(wall.accumulation().settledBy().orElseThrow()).contains("vapour resistance");
    assertThat(wall.accumulation().because()).contains("not at the favourable ends");
  }

  @Test
  void likely_dry_and_possibly_not_is_told_apart() {
    WallWithin dries = wall(home(0, BOARD, WOOL, BRICK), vapour(new Range(0, 100, 700)));
    assertThat(dries.year().likely()).isEqualTo(Iso13788Element.Verdict.NONE);
    assertThat(dries.accumulation().because())
        .isEqualTo(
            "Likely no water settles. At the unfavourable ends of all ranges it settles between the"
                + " mineral wool and the brick and dries within the year.");
    WallWithin stays = wall(home(0, BOARD, WOOL, FOIL, BRICK), vapour(new Range(0, 100, 1100)));
    assertThat(stays.accumulation().verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(stays.accumulation().because())
        .startsWith("Likely no water settles, but at the unfavourable ends");
    assertThat(stays.content().orElseThrow().verdict()).isEqualTo(Verdict.UNKNOWN);
    WallWithin likelyDries = wall(home(0, BOARD, WOOL, BRICK), vapour(new Range(600, 700, 1100)));
    assertThat(likelyDries.accumulation().because())
        .startsWith("Likely the water that settles between the mineral wool and the brick (")
        .endsWith("but at the unfavourable ends of all ranges it stays from year to year.");
  }

  @Test
  void a_control_layer_is_tried_where_none_is_there() {
    WallVariant added = wall(BOARD, WOOL, BRICK).variants().get(0);
    assertThat(added.kind()).isEqualTo(VariantKind.CONTROL_LAYER);
    assertThat(added.changed().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(added.changed().working().sources()).isNotEmpty();
    assertThat(added.highest().likely()).isLessThan(0.05);
    assertThat(wall(BOARD, "{material: polythene sheet}", WOOL, BRICK).variants())
        .extracting(WallVariant::kind)
        .containsExactly(VariantKind.MOISTER_AIR);
    assertThat(wall("{material: plaster, thickness: 13 mm}", BRICK).variants())
        .extracting(WallVariant::kind)
        .containsExactly(VariantKind.MOISTER_AIR);
  }

  @Test
  void an_open_membrane_is_no_tight_sheet() {
    assertThat(wall(BOARD, WOOL, "{material: breather membrane}", BRICK).variants())
        .extracting(WallVariant::kind)
        .containsExactly(VariantKind.CONTROL_LAYER, VariantKind.MOISTER_AIR);
  }

  /** Just below the moisture at which the first water settles nothing does, just above it does. */
  @Test
  void the_air_up_to_which_it_stays_dry_is_the_brink() {
    double brink = wall(BOARD, WOOL, BRICK).dryBelow().orElseThrow().likely();
    assertThat(brink).isBetween(100.0, 810.0);
    assertThat(
            wall(home(0, BOARD, WOOL, BRICK), vapour(Range.exactly(brink * 0.999))).year().likely())
        .isEqualTo(Iso13788Element.Verdict.NONE);
    assertThat(
            wall(home(0, BOARD, WOOL, BRICK), vapour(Range.exactly(brink * 1.001))).year().likely())
        .isEqualTo(Iso13788Element.Verdict.DRIES);
  }

  @Test
  void no_air_wets_a_wall_that_is_as_open_as_it_is_warm() {
    String open = "{material: plaster, thickness: 10 mm, conductivity: 500 W/mK, vapour_factor: 1}";
    assertThat(wall(open).dryBelow()).isEmpty();
  }

  @Test
  void leaking_air_is_a_bound_at_the_wet_place_or_the_cold_face_of_the_insulation() {
    Figure wet = wall(BOARD, WOOL, BRICK).leakingAir().orElseThrow();
    assertThat(wet.basis()).isEqualTo(Basis.ASSUMED);
    assertThat(wet.value().high()).isCloseTo(4 * wet.likely(), within(1e-9));
    assertThat(wet.working().note().orElseThrow()).contains("saturated");
    WallWithin dry = wall(BOARD, "{material: polythene sheet}", WOOL, BRICK);
    assertThat(dry.year().likely()).isEqualTo(Iso13788Element.Verdict.NONE);
    assertThat(dry.leakingAir().orElseThrow().likely()).isCloseTo(wet.likely(), within(1e-9));
  }

  @Test
  void the_working_of_the_worst_month_can_be_redone() {
    Figure settling = wall(BOARD, WOOL, BRICK).year().settling().orElseThrow();
    List<Double> in = settling.working().inputs().stream().map(i -> i.value().likely()).toList();
    double again =
        2e-10
            * ((in.get(0) - in.get(1)) / in.get(3) - (in.get(1) - in.get(2)) / in.get(4))
            * 86400
            * in.get(5);
    assertThat(settling.likely()).isCloseTo(again, within(1e-12));
    assertThat(settling.name()).isEqualTo("water that settles in January");
    assertThat(settling.likely()).isCloseTo(0.988, within(0.001));
  }

  @Test
  void the_profile_runs_from_surface_to_surface_below_saturation() {
    WallProfile profile = wall(BOARD, WOOL, BRICK).year().profile();
    assertThat(profile.month()).isEqualTo(1);
    assertThat(profile.points().get(0).layer()).isZero();
    assertThat(profile.points().get(profile.points().size() - 1).layer()).isEqualTo(3);
    assertThat(profile.points()).allMatch(p -> p.vapourPa() <= p.saturationPa() * (1 + 1e-12));
    assertThat(profile.points().stream().filter(ProfilePoint::settling)).hasSize(1);
    assertThat(profile.points().get(0).temperatureC()).isLessThan(profile.indoorC());
  }

  @Test
  void layers_of_one_material_are_told_apart() {
    WallWithin wall = wall(BRICK, "{material: cavity}", BRICK, "{material: cavity}", BRICK);
    assertThat(wall.layers())
        .extracting(WallLayer::name)
        .containsExactly(
            "inner brick", "inner air gap", "middle brick", "outer air gap", "outer brick");
    assertThat(wall.layers())
        .extracting(WallLayer::kind)
        .contains(LayerKind.MASONRY, LayerKind.CAVITY);
  }

  @Test
  void every_layer_says_where_its_figures_come_from() {
    WallWithin wall =
        wall(
            "{material: plasterboard, thickness: 12.5 mm}",
            CONTROL,
            "{material: glass, thickness: 6 mm}",
            "{material: polyurethane board, thickness: 50 mm, sd: 100 m}");
    WallLayer board = wall.layers().get(0);
    assertThat(board.airLayer().likely()).isCloseTo(0.125, within(1e-12));
    assertThat(board.airLayer().value().low()).isCloseTo(0.05, within(1e-12));
    assertThat(board.airLayer().working().formula()).isEqualTo("sd = μ · d");
    assertThat(board.resistance().working().inputs()).hasSize(2);
    assertThat(board.airLayer().working().sources()).hasSize(1);
    WallLayer sheet = wall.layers().get(1);
    assertThat(sheet.airLayer().basis()).isEqualTo(Basis.DECLARED);
    assertThat(sheet.airLayer().working().formula()).isEqualTo("sd as stated");
    assertThat(sheet.resistance().working().inputs()).isEmpty();
    assertThat(sheet.table()).isEmpty();
    WallLayer glass = wall.layers().get(2);
    assertThat(glass.airLayer().likely()).isEqualTo(1500);
    assertThat(glass.airLayer().working().sources()).hasSize(2);
    assertThat(wall.layers().get(3).table()).isPresent();
    assertThat(wall.layers().get(3).airLayer().likely()).isEqualTo(100);
  }

  @Test
  void table_values_are_an_assumption_and_stated_ones_are_not() {
    ElementsResult table =
        assess(home(0, "{material: brick, thickness: 215 mm}"), IndoorVapours.none());
    assertThat(table.assumptions()).extracting(a -> a.id()).containsExactly("element.layers");
    assertThat(table.assumptions().get(0).assumed()).endsWith("for brick");
    assertThat(assess(home(0, BOARD, WOOL, BRICK), IndoorVapours.none()).assumptions()).isEmpty();
  }

  @Test
  void walls_of_unknown_layers_are_left_out() {
    assertThat(
            assess(home(0, "{material: moon dust, thickness: 20 mm}"), IndoorVapours.none())
                .walls())
        .isEmpty();
    assertThat(
            assess(home(0, BRICK, "{material: moon dust, thickness: 20 mm}"), IndoorVapours.none())
                .walls())
        .isEmpty();
    assertThat(assess(home(0, "{material: brick}"), IndoorVapours.none()).walls()).isEmpty();
    assertThat(assess(home(0, "{material: brick, thickness: 0 mm}"), IndoorVapours.none()).walls())
        .isEmpty();
  }

  @Test
  void the_limits_of_the_method_stand_beside_the_verdict() {
    assertThat(wall(BOARD, WOOL, BRICK).limits())
        .hasSize(3)
        .anyMatch(l -> l.contains("driving rain"))
        .anyMatch(l -> l.contains("only a screen"))
        .anyMatch(l -> l.contains("before such work"));
    assertThat(wall(BRICK, WOOL).limits()).last().asString().startsWith("Where much hangs");
    assertThat(wall(BOARD, WOOL).limits()).hasSize(2);
  }

  @Test
  void assumed_moisture_makes_assumed_water() {
    assertThat(wall(BOARD, WOOL, BRICK).year().highest().basis()).isEqualTo(Basis.ASSUMED);
    WallWithin read = wall(home(0, BOARD, WOOL, BRICK), vapour(Range.exactly(600)));
    assertThat(read.year().highest().basis()).isEqualTo(Basis.CALCULATED);
    assertThat(read.findings()).hasSize(2);
    assertThat(read.name()).isEqualTo("north wall");
  }
}
