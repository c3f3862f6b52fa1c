package org.drysill.assess.surfaces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.surfaces.SurfaceFixtures.assess;
import static org.drysill.assess.surfaces.SurfaceFixtures.home;
import static org.drysill.assess.surfaces.SurfaceFixtures.place;
import static org.drysill.assess.surfaces.SurfaceFixtures.vapour;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.humidity.HumidityAssessor;
import org.drysill.assess.humidity.RoomAir;
import org.drysill.assess.surfaces.factor.FactorSource;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

class NowAndWallsTest {
  private static final String OUTDOOR =
      "{at: 2026-01-22T09:40, temperature: 3.2 C, humidity: 88 %, instrument: th1}";
  private static final String AIR =
      "readings: [{at: 2026-01-22T10:05, temperature: 20 C, humidity: 60 %, instrument: th1}]\n";

  /**
   * 20 °C, 60 %: dew point 12.0 °C (handbook psychrometrics, computed). Read at 11.4 °C the corner
   * is 0.6 K below it. Its factor is (11.4 - 3.2) / (20 - 3.2) = 0.488, so water appears below
   * (12.0 - 0.488 x 20) / 0.512 = 4.4 °C.
   */
  @Test
  void a_corner_at_the_visit() {
    String keys =
        AIR
            + "cold_spots: [{id: s, kind: external corner, readings: [{at: 2026-01-22T10:12, surface: 11.4 C, instrument: ir1}]}]";
    SurfaceNow now = place(assess(home(OUTDOOR, keys)), "s").now().orElseThrow();
    assertThat(now.dewPoint().likely()).isCloseTo(12.0, within(0.05));
    assertThat(now.surface().likely()).isEqualTo(11.4);
    assertThat(now.margin().likely()).isCloseTo(-0.6, within(0.05));
    assertThat(now.surfaceHumidity().likely()).isGreaterThan(1);
    assertThat(now.wetBelow().orElseThrow().likely()).isCloseTo(4.4, within(0.1));
    assertThat(now.margin().basis()).isEqualTo(Basis.MEASURED);
    assertThat(now.wetBelow().orElseThrow().working().formula()).startsWith("Te =");
    assertThat(now.dewPoint().value().isSpread()).isTrue();
  }

  @Test
  void a_place_that_was_not_read_follows_from_its_factor() {
    String keys = AIR + "cold_spots: [{id: s, kind: lintel, temperature_factor: 0.5}]";
    SurfaceNow now = place(assess(home(OUTDOOR, keys)), "s").now().orElseThrow();
    assertThat(now.surface().likely()).isCloseTo(11.6, within(1e-9));
    assertThat(now.surface().basis()).isEqualTo(Basis.CALCULATED);
    assertThat(now.surface().working().inputs()).hasSize(3);
  }

  /**
   * The air's temperature of 20.0 ± 0.4 °C stands in the surface and in its dew point, and is wrong
   * in both alike. Humidity 60 ± 2.5 %, factor 0.50 ± 0.05, outdoors 3.2 ± 0.4 °C, by hand: driest
   * at the surface 0.575 ps(19.6) / ps(3.6 + 0.55 x 16.0 = 12.40 °C) = 1311 / 1439 Pa, moistest
   * 0.625 ps(20.4) / ps(2.8 + 0.45 x 17.6 = 10.72 °C) = 1497 / 1288 Pa; likewise the rest.
   */
  @Test
  void the_error_of_the_air_temperature_counts_once() {
    String keys = AIR + "cold_spots: [{id: s, kind: lintel, temperature_factor: 0.5}]";
    SurfaceNow now = place(assess(home(OUTDOOR, keys)), "s").now().orElseThrow();
    assertRange(now.surfaceHumidity(), 0.9108, 1.0270, 1.1626, 0.0005);
    assertRange(now.margin(), -2.282, -0.404, 1.414, 0.005);
    assertRange(now.wetBelow().orElseThrow(), 0.459, 4.008, 6.949, 0.01);
  }

  private static void assertRange(
      Figure figure, double low, double likely, double high, double error) {
    assertThat(figure.value().low()).isCloseTo(low, within(error));
    assertThat(figure.likely()).isCloseTo(likely, within(error));
    assertThat(figure.value().high()).isCloseTo(high, within(error));
  }

  /** With 18 °C indoors and 24 °C outdoors the lower factor is the warmer surface. */
  @Test
  void where_it_is_warmer_outdoors_a_poorer_surface_is_the_warmer_one() {
    String keys =
        "readings: [{temperature: 17.9..18.1 C, humidity: 60 %}]\n"
            + "cold_spots: [{id: s, kind: lintel, temperature_factor: 0.65..0.75}]";
    Figure surface =
        place(assess(home("{temperature: 23.9..24.1 C}", keys)), "s").now().orElseThrow().surface();
    assertThat(surface.value().low()).isCloseTo(23.9 - 0.75 * 6, within(1e-9));
    assertThat(surface.likely()).isCloseTo(24 - 0.7 * 6, within(1e-9));
    assertThat(surface.value().high()).isCloseTo(24.1 - 0.65 * 6, within(1e-9));
  }

  @Test
  void an_assumed_factor_makes_an_assumed_surface() {
    String keys = AIR + "cold_spots: [{id: s, kind: lintel}]";
    SurfaceNow now = place(assess(home(OUTDOOR, keys)), "s").now().orElseThrow();
    assertThat(now.surface().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(now.wetBelow().orElseThrow().basis()).isEqualTo(Basis.ASSUMED);
  }

  @Test
  void without_humidity_or_outdoors_nothing_is_said_of_the_visit() {
    String spot = "cold_spots: [{id: s, kind: lintel, temperature_factor: 0.5}]";
    assertThat(place(assess(home(OUTDOOR, spot)), "s").now()).isEmpty();
    assertThat(place(assess(home("", AIR + spot)), "s").now()).isEmpty();
    String dry = "readings: [{temperature: 20 C}]\n";
    assertThat(place(assess(home(OUTDOOR, dry + spot)), "s").now()).isEmpty();
  }

  /** Sensors show humidity over water, below freezing too: 90 % at -3 °C are 440.5 Pa. */
  @Test
  void the_vapour_of_a_frosty_loft_is_that_of_its_reading() {
    String loft =
        "readings: [{temperature: -3 C, humidity: 90 %}]\n"
            + "cold_spots: [{id: s, kind: ceiling, readings: [{surface: -5 C}]}]";
    Home home = home("{temperature: -12 C}", loft);
    SurfaceNow now = place(assess(home), "s").now().orElseThrow();
    RoomAir air =
        HumidityAssessor.assess(home, SurfaceFixtures.TABLES.readings()).readings().get(0);
    assertThat(air.vapourPressure().likely()).isCloseTo(440.5, within(0.1));
    assertThat(now.dewPoint().likely()).isEqualTo(air.dewPoint().likely());
  }

  @Test
  void no_weather_wets_a_place_as_warm_as_the_room() {
    String dry = "readings: [{temperature: 20 C, humidity: 0 %}]\n";
    String keys = dry + "cold_spots: [{id: s, kind: lintel, temperature_factor: 0.98}]";
    assertThat(place(assess(home(OUTDOOR, keys)), "s").now().orElseThrow().wetBelow()).isEmpty();
  }

  /** Brick of 215 mm with dense plaster of 13 mm: R = 0.215/0.77 + 0.013/0.57 = 0.3020. */
  @Test
  void a_built_up_wall_follows_from_its_layers() {
    String keys =
        "walls: [{id: n, layers: [{material: dense plaster, thickness: 13 mm}, {material: brick, thickness: 215 mm}]}]";
    ColdPlace wall = place(assess(home("", keys)), "n");
    double layers = 0.215 / 0.77 + 0.013 / 0.57;
    assertThat(wall.factor().figure().likely())
        .isCloseTo(1 - 0.25 / (0.25 + layers + 0.04), within(1e-9));
    assertThat(wall.factor().figure().working().sources()).hasSize(3);
    Figure furnished = wall.behindFurniture().orElseThrow().provided().orElseThrow();
    assertThat(furnished.likely()).isCloseTo(1 - 0.5 / (0.5 + layers + 0.04), within(1e-9));
    assertThat(wall.kind()).isEqualTo(PlaceKind.BUILT_UP_WALL);
    assertThat(wall.name()).isEqualTo("wall n");
  }

  @Test
  void membranes_count_nothing_and_air_gaps_their_own_resistance() {
    String keys =
        "walls: [{id: n, name: North wall, layers: [{material: foil, thickness: 0.1 mm}, {material: cavity, thickness: 50 mm}, {material: own board, thickness: 20 mm, conductivity: 0.2 W/mK}]}]";
    assertThat(place(assess(home("", keys)), "n").factor().figure().likely())
        .isCloseTo(1 - 0.25 / (0.25 + 0.18 + 0.1 + 0.04), within(1e-9));
  }

  @Test
  void an_unknown_layer_leaves_a_typical_wall() {
    String keys = "walls: [{id: n, layers: [{material: moon dust, thickness: 20 mm}]}]";
    assertThat(place(assess(home("", keys)), "n").factor().source())
        .isEqualTo(FactorSource.TYPICAL_DETAIL);
  }

  @Test
  void class_three_stands_in_for_readings_and_is_said() {
    CondensationResult result = assess(home("", "cold_spots: [{id: s, kind: lintel}]"));
    assertThat(result.vapour())
        .containsExactly(
            "Back bedroom: 810 Pa above outdoors at 0 °C, from the upper limit of humidity class"
                + " 3.");
    assertThat(result.assumptions())
        .extracting(a -> a.id())
        .containsExactly(
            "surface.indoor_vapour",
            "surface.free_running",
            "surface.memory",
            "surface.made_hours",
            "surface.mould_sensitivity",
            "surface.typical_details");
    assertThat(result.findings()).hasSize(2);
  }

  @Test
  void readings_on_a_warm_day_are_not_carried_to_winter() {
    CondensationResult result =
        SurfaceAssessor.assess(
            home("", "cold_spots: [{id: s, kind: lintel}]"),
            vapour(300, 16),
            SurfaceFixtures.TABLES);
    assertThat(result.vapour().get(0)).contains("too warm outdoors (16 °C)");
    assertThat(result.vapour().get(0)).contains("humidity class 3");
  }

  @Test
  void the_room_counts_before_the_home() {
    IndoorVapour room =
        new IndoorVapour(
            Range.exactly(500), 5, Basis.MEASURED, "a log", Optional.empty(), List.of());
    IndoorVapours both = new IndoorVapours(vapour(300, 4.5).home(), Map.of("bed", room));
    CondensationResult result =
        SurfaceAssessor.assess(
            home("", "cold_spots: [{id: s, kind: lintel, temperature_factor: 0.9}]"),
            both,
            SurfaceFixtures.TABLES);
    assertThat(result.vapour())
        .containsExactly("Back bedroom: 500 Pa above outdoors at 5 °C, from a log.");
    assertThat(result.assumptions())
        .extracting(a -> a.id())
        .containsExactly(
            "surface.free_running",
            "surface.memory",
            "surface.made_hours",
            "surface.mould_sensitivity");
  }

  /**
   * ISO 13788:2012, Annex A (memory): constant to 0 °C, nothing at 20 °C; 600 Pa at 5 °C is 800 at
   * 0.
   */
  @Test
  void the_excess_is_carried_with_the_shape_of_the_classes() {
    IndoorVapour read = vapour(600, 5).home().orElseThrow();
    assertThat(read.excessAt(-10).likely()).isCloseTo(800, within(1e-9));
    assertThat(read.excessAt(10).likely()).isCloseTo(400, within(1e-9));
    assertThat(read.excessAt(25).likely()).isEqualTo(0);
  }

  @Test
  void a_home_without_places_has_nothing_to_say() {
    CondensationResult result = assess(home("", "notes: none"));
    assertThat(result.places()).isEmpty();
    assertThat(result.assumptions()).isEmpty();
    assertThat(result.vapour()).isEmpty();
  }
}
