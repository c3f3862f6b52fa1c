package org.drysill.assess.surfaces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.Working.Input;
import org.drysill.assess.humidity.HumidityAssessor;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.physics.Range;
import org.drysill.reference.readings.ReadingRules;
import org.junit.jupiter.api.Test;

/** A room without a reading of its own takes the mean of the rooms that were read. */
class VapourOfUnreadRoomsTest {
  private static final String READ =
      """
      - {id: dry, use: living, floor_area: 30 m2,
         readings: [{at: 2026-01-22T10:05, temperature: 20 C, humidity: 45 %}]}
      - {id: damp, use: bathroom, floor_area: 10 m2,
         readings: [{at: 2026-01-22T10:10, temperature: 21 C, humidity: 75 %}],
         cold_spots: [{id: damp-lintel, kind: lintel, temperature_factor: 0.7}]}
      """;
  private static final String UNREAD =
      """
      - {id: box, name: box room, use: bedroom, floor_area: 8 m2,
         cold_spots: [{id: box-lintel, kind: lintel, temperature_factor: 0.7}]}
      """;

  private static Home home(String outdoor, String rooms) {
    String text =
        """
        drysill: 1
        visit: {date: 2026-01-22}
        dwelling: {jurisdiction: england, floor_area: 84 m2}
        outdoor_readings: [OUTDOOR]
        rooms:
        """
            .replace("OUTDOOR", outdoor);
    return HomeFixtures.of(HomeFixtures.read(text + rooms.stripIndent().strip().indent(2)));
  }

  private static HumidityResult humidity(Home home) {
    return HumidityAssessor.assess(home, ReadingRules.bundled());
  }

  private static CondensationResult assess(Home home) {
    return SurfaceAssessor.assess(home, IndoorVapours.of(humidity(home)), SurfaceFixtures.TABLES);
  }

  private static List<String> assumed(CondensationResult result) {
    return result.assumptions().stream().map(Assumption::id).toList();
  }

  @Test
  void it_is_the_mean_by_volume_and_neither_the_first_nor_the_last_room() {
    Home home = home("{at: 2026-01-22T10:00, temperature: 5 C, humidity: 85 %}", READ + UNREAD);
    HumidityResult read = humidity(home);
    IndoorVapours vapours = IndoorVapours.of(read);
    double dry = read.readings().get(0).excessPressure().likely();
    double damp = read.readings().get(1).excessPressure().likely();
    assertThat(vapours.of("box").orElseThrow().excess().likely())
        .isCloseTo(0.75 * dry + 0.25 * damp, within(1e-9));
    assertThat(vapours.of("damp").orElseThrow().excess().likely()).isEqualTo(damp);
    assertThat(vapours.isRead("damp")).isTrue();
    assertThat(vapours.isRead("box")).isFalse();
  }

  @Test
  void it_is_stated_as_an_assumption_that_names_the_room() {
    CondensationResult result =
        assess(home("{at: 2026-01-22T10:00, temperature: 5 C, humidity: 85 %}", READ + UNREAD));
    Assumption stated =
        result.assumptions().stream()
            .filter(a -> a.id().equals("surface.indoor_vapour_unread"))
            .findFirst()
            .orElseThrow();
    assertThat(stated.about()).endsWith("box room");
    assertThat(stated.assumed()).contains("the mean of the rooms that were read");
    assertThat(assumed(result)).doesNotContain("surface.indoor_vapour");
    assertThat(result.vapour().get(1)).startsWith("Box room: ").endsWith("were read.");
  }

  /** Nothing to 270 Pa at 0 °C, class 1 of ISO 13788 (memory): not the vapour of warm rooms. */
  @Test
  void a_cellar_that_was_not_read_is_no_heated_room() {
    String cellar =
        """
        - {id: cellar, use: cellar, floor_area: 8 m2,
           cold_spots: [{id: foot, kind: floor edge, temperature_factor: 0.7}]}
        """;
    CondensationResult result =
        assess(home("{at: 2026-01-22T10:00, temperature: 5 C, humidity: 85 %}", READ + cellar));
    assertThat(origin(result, "foot").value()).isEqualTo(new Range(0, 135, 270));
    assertThat(assumed(result))
        .contains("surface.indoor_vapour_unheated")
        .doesNotContain("surface.indoor_vapour", "surface.indoor_vapour_unread");
  }

  @Test
  void a_cellar_that_was_read_has_the_vapour_of_its_reading() {
    String cellar =
        """
        - {id: cellar, use: cellar, floor_area: 8 m2,
           readings: [{at: 2026-01-22T10:10, temperature: 12 C, humidity: 80 %}],
           cold_spots: [{id: foot, kind: floor edge, temperature_factor: 0.7}]}
        """;
    CondensationResult result =
        assess(home("{at: 2026-01-22T10:00, temperature: 5 C, humidity: 85 %}", READ + cellar));
    assertThat(origin(result, "foot").figure()).contains("room.cellar.vapour_pressure_excess");
    assertThat(assumed(result)).doesNotContain("surface.indoor_vapour_unheated");
  }

  @Test
  void rooms_that_were_all_read_assume_nothing_of_their_vapour() {
    CondensationResult result =
        assess(home("{at: 2026-01-22T10:00, temperature: 5 C, humidity: 85 %}", READ));
    assertThat(assumed(result)).noneMatch(id -> id.startsWith("surface.indoor_vapour"));
  }

  @Test
  void a_mean_read_in_warm_weather_says_nothing_of_winter() {
    CondensationResult result =
        assess(home("{at: 2026-01-22T10:00, temperature: 17 C, humidity: 70 %}", READ + UNREAD));
    assertThat(assumed(result))
        .contains("surface.indoor_vapour")
        .doesNotContain("surface.indoor_vapour_unread");
    assertThat(result.vapour()).allMatch(s -> s.contains("too warm outdoors (17"));
  }

  @Test
  void the_working_of_a_month_leads_to_the_reading_behind_it() {
    CondensationResult result =
        assess(home("{at: 2026-01-22T10:00, temperature: 5 C, humidity: 85 %}", READ + UNREAD));
    assertThat(origin(result, "damp-lintel").figure()).contains("room.damp.vapour_pressure_excess");
    assertThat(origin(result, "box-lintel").figure())
        .contains("home.vapour_pressure_excess_unread");
    assertThat(origin(result, "box-lintel").basis()).isEqualTo(Basis.ASSUMED);
    assertThat(
            SurfaceFixtures.place(result, "box-lintel")
                .months()
                .requiredFactor()
                .orElseThrow()
                .basis())
        .isEqualTo(Basis.ASSUMED);
  }

  private static Input origin(CondensationResult result, String place) {
    return SurfaceFixtures.place(result, place)
        .months()
        .requiredFactor()
        .orElseThrow()
        .working()
        .inputs()
        .stream()
        .filter(i -> i.symbol().equals("Δp"))
        .findFirst()
        .orElseThrow();
  }
}
