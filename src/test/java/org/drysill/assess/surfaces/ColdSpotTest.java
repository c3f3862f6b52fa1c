package org.drysill.assess.surfaces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.surfaces.SurfaceFixtures.assess;
import static org.drysill.assess.surfaces.SurfaceFixtures.home;
import static org.drysill.assess.surfaces.SurfaceFixtures.place;

import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.surfaces.factor.FactorSource;
import org.drysill.assess.surfaces.factor.ReadingFactor;
import org.drysill.assess.surfaces.factor.ReadingQuality;
import org.drysill.physics.Range;
import org.drysill.survey.CondensationSeen;
import org.junit.jupiter.api.Test;

class ColdSpotTest {
  private static ColdPlace spot(String keys) {
    return place(assess(home("", "cold_spots: [{id: s, kind: " + keys + "}]")), "s");
  }

  private static ColdPlace read(String... readings) {
    return spot("external corner, readings: [" + String.join(",", readings) + "]");
  }

  /** A heading says "the" before it. */
  @Test
  void a_place_without_a_name_is_called_by_what_it_is() {
    assertThat(spot("behind furniture, temperature_factor: 0.6").name())
        .isEqualTo("wall behind furniture");
    assertThat(spot("other, temperature_factor: 0.6").name()).isEqualTo("cold place");
    assertThat(spot("lintel, temperature_factor: 0.6").name()).isEqualTo("lintel");
  }

  /**
   * (11.4 - 3.2) / (19.8 - 3.2) = 0.494; with 1 K on the surface and 0.5 K on both airs u = √(1 +
   * (0.494 x 0.5)² + (0.506 x 0.5)²) / 16.6 = 0.0639.
   */
  @Test
  void readings_give_a_factor_with_its_error() {
    ColdPlace corner =
        read("{surface: 11.4 C, air: 19.8 C ± 0.5, outdoor: 3.2 C ± 0.5, instrument: ir1}");
    Range factor = corner.factor().figure().value();
    assertThat(factor.likely()).isCloseTo(0.494, within(0.0005));
    assertThat(factor.high() - factor.likely()).isCloseTo(0.0639, within(0.0002));
    assertThat(corner.factor().figure().basis()).isEqualTo(Basis.MEASURED);
    assertThat(corner.factor().weak()).isFalse();
    assertThat(corner.factor().figure().working().inputs()).hasSize(3);
  }

  @Test
  void below_five_kelvin_a_reading_is_refused_and_a_typical_detail_stands_in() {
    ColdPlace corner = read("{surface: 16 C, air: 19.9 C, outdoor: 15 C}");
    ReadingFactor reading = corner.factor().readings().get(0);
    assertThat(reading.quality()).isEqualTo(ReadingQuality.REFUSED);
    assertThat(reading.factor()).isEmpty();
    assertThat(reading.why())
        .isEqualTo(
            "refused: indoors was only 4.9 K warmer than outdoors; below 5 K the errors of the"
                + " thermometers outweigh what is looked for");
    assertThat(corner.factor().source()).isEqualTo(FactorSource.TYPICAL_DETAIL);
    assertThat(corner.factor().why()).contains("a home of 1931").contains("refused");
    assertThat(corner.factor().figure().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(corner.factor().figure().working().note()).isPresent();
  }

  @Test
  void a_reading_in_summer_is_refused_in_words_that_fit() {
    ReadingFactor reading =
        read("{surface: 23 C, air: 24 C, outdoor: 30 C}").factor().readings().get(0);
    assertThat(reading.quality()).isEqualTo(ReadingQuality.REFUSED);
    assertThat(reading.why())
        .isEqualTo(
            "refused: outdoors was 6.0 K warmer than indoors; a factor is read in cold weather");
  }

  @Test
  void from_five_to_ten_kelvin_a_reading_is_weak() {
    ColdPlace corner = read("{surface: 16 C, air: 20 C, outdoor: 15 C}");
    assertThat(corner.factor().readings().get(0).quality()).isEqualTo(ReadingQuality.WEAK);
    assertThat(corner.factor().weak()).isTrue();
    assertThat(corner.factor().why())
        .isEqualTo(
            "From one reading: weak: indoors was only 5.0 K warmer than outdoors, 10 K would be"
                + " better.");
  }

  @Test
  void at_ten_kelvin_a_reading_is_normal() {
    assertThat(
            read("{surface: 16 C, air: 20 C, outdoor: 10 C}").factor().readings().get(0).quality())
        .isEqualTo(ReadingQuality.NORMAL);
  }

  @Test
  void a_surface_warmer_than_the_room_or_colder_than_outdoors_is_refused() {
    assertThat(read("{surface: 21 C, air: 20 C, outdoor: 5 C}").factor().readings().get(0).why())
        .contains("warmer than the room");
    assertThat(read("{surface: 4 C, air: 20 C, outdoor: 5 C}").factor().readings().get(0).why())
        .contains("colder than outdoors");
  }

  @Test
  void a_reading_without_air_or_outdoors_is_refused() {
    assertThat(read("{surface: 12 C, outdoor: 5 C}").factor().readings().get(0).why())
        .isEqualTo("refused: no air temperature was read beside it");
    assertThat(read("{surface: 12 C, air: 20 C}").factor().readings().get(0).why())
        .isEqualTo("refused: no outdoor temperature was read with it");
  }

  /** Equal errors: the plain mean of 0.5 and 0.6; the scatter of 0.05 adds in quadrature. */
  @Test
  void several_readings_are_weighted_together() {
    ColdPlace corner =
        read(
            "{surface: 10 C ± 1, air: 20 C ± 0.001, outdoor: 0 C ± 0.001}",
            "{surface: 12 C ± 1, air: 20 C ± 0.001, outdoor: 0 C ± 0.001}");
    Range factor = corner.factor().figure().value();
    assertThat(factor.likely()).isCloseTo(0.55, within(1e-6));
    assertThat(factor.high() - factor.likely()).isCloseTo(Math.hypot(0.05, 0.05), within(1e-6));
    assertThat(corner.factor().why()).startsWith("From 2 readings: ");
  }

  @Test
  void a_sharper_reading_counts_more() {
    ColdPlace corner =
        read(
            "{surface: 10 C ± 0.5, air: 20 C ± 0.001, outdoor: 0 C ± 0.001}",
            "{surface: 12 C ± 1, air: 20 C ± 0.001, outdoor: 0 C ± 0.001}");
    assertThat(corner.factor().figure().likely()).isCloseTo(0.52, within(1e-6));
  }

  @Test
  void the_coldest_of_several_points_counts() {
    ColdPlace corner =
        read(
            "{surface: 12 C, air: 20 C, outdoor: 0 C, at_point: high}",
            "{surface: 10 C, air: 20 C, outdoor: 0 C, at_point: low}");
    assertThat(corner.factor().figure().likely()).isCloseTo(0.5, within(1e-9));
    assertThat(corner.factor().readings()).hasSize(2);
  }

  @Test
  void a_stated_factor_has_an_error_even_where_none_is_stated() {
    ColdPlace corner = spot("lintel, temperature_factor: 0.62");
    assertThat(corner.factor().source()).isEqualTo(FactorSource.STATED);
    assertThat(corner.factor().figure().value().low()).isCloseTo(0.57, within(1e-9));
    assertThat(corner.factor().figure().basis()).isEqualTo(Basis.DECLARED);
    assertThat(corner.factor().figure().working().formula()).startsWith("f as stated");
  }

  /**
   * 1 - 0.25 / (1/2.1 - 0.13 + 0.25) = 0.5807; behind furniture, 0.50: 0.4091 (ISO 13788, own
   * arithmetic).
   */
  @Test
  void a_u_value_gives_the_factor_of_a_wall_and_of_the_same_behind_furniture() {
    ColdPlace wall = spot("wall, u_value: 2.1 W/m2K");
    assertThat(wall.factor().figure().likely()).isCloseTo(0.5807, within(0.0001));
    assertThat(wall.behindFurniture().orElseThrow().provided().orElseThrow().likely())
        .isCloseTo(0.4091, within(0.0001));
    assertThat(wall.factor().weak()).isFalse();
    assertThat(wall.factor().figure().working().inputs()).hasSize(4);
    assertThat(spot("behind furniture, u_value: 2.1 W/m2K").factor().figure().likely())
        .isCloseTo(0.4091, within(0.0001));
  }

  @Test
  void a_corner_by_u_value_is_weak_and_says_what_is_missing() {
    ColdPlace corner = spot("external corner, u_value: 2.1 W/m2K");
    assertThat(corner.factor().weak()).isTrue();
    assertThat(corner.factor().why()).contains("geometry is not in it");
    assertThat(corner.behindFurniture()).isEmpty();
  }

  @Test
  void films_within_the_u_value_follow_the_flow_of_heat() {
    // 1 - 0.25 / (1/1 - 0.10 + 0.25) and 1 - 0.25 / (1/1 - 0.17 + 0.25)
    assertThat(spot("ceiling, u_value: 1.0 W/m2K").factor().figure().likely())
        .isCloseTo(1 - 0.25 / 1.15, within(1e-9));
    assertThat(spot("floor, u_value: 1.0 W/m2K").factor().figure().likely())
        .isCloseTo(1 - 0.25 / 1.08, within(1e-9));
  }

  @Test
  void a_u_value_above_that_of_bare_films_counts_as_bare_films() {
    assertThat(spot("wall, u_value: 9 W/m2K").factor().figure().likely())
        .isCloseTo(1 - 0.25 / (0.25 + 0.04), within(1e-9));
  }

  @Test
  void whole_walls_without_a_u_value_say_nothing_of_furniture() {
    assertThat(spot("wall").behindFurniture()).isEmpty();
  }

  @Test
  void what_was_seen_is_kept() {
    ColdPlace corner = spot("external corner, mould_seen: patches, mould_area: 0.15 m2");
    assertThat(corner.seen().trouble()).isTrue();
    assertThat(corner.seen().mouldArea()).contains(Range.exactly(0.15));
    assertThat(spot("lintel, mould_seen: none").seen().trouble()).isFalse();
    assertThat(Seen.nothingNoted().trouble()).isFalse();
    assertThat(wetness(CondensationSeen.NEVER).trouble()).isFalse();
    assertThat(wetness(CondensationSeen.SOMETIMES).trouble()).isTrue();
  }

  private static Seen wetness(CondensationSeen seen) {
    return new Seen(Optional.empty(), Optional.empty(), Optional.of(seen));
  }
}
