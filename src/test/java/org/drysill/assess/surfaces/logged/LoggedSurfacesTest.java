package org.drysill.assess.surfaces.logged;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.humidity.HumidityAssessor;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.logs.LogFixtures;
import org.drysill.assess.logs.LogsAssessor;
import org.drysill.assess.logs.LogsResult;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.IndoorVapour;
import org.drysill.assess.surfaces.IndoorVapours;
import org.drysill.assess.surfaces.SurfaceAssessor;
import org.drysill.reference.logs.LogRules;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.log.Logs;
import org.junit.jupiter.api.Test;

/** A corner of factor 0.6 over a log, and which vapour the months are judged with. */
class LoggedSurfacesTest {
  private static final SurfaceTables TABLES = SurfaceTables.bundled();

  private static List<LoggedSurface> surfaces(Home home, LogsResult logs) {
    HumidityResult humidity = HumidityAssessor.assess(home, ReadingRules.bundled());
    CondensationResult cold =
        SurfaceAssessor.assess(home, IndoorVapours.of(home, humidity, logs), TABLES);
    return LoggedSurfaces.of(cold.places(), logs, TABLES.surfaces().mouldLimit());
  }

  /**
   * 20 °C indoors, 5 °C outdoors: the corner is at 14 °C, where 1599 Pa saturate. 50 % of 2337 Pa
   * is 73 % there, 58 % is 85 %, 72 % is 105 %.
   */
  @Test
  void hours_are_counted_by_the_air_of_the_same_step() {
    Home home = LogFixtures.home();
    LogsResult logs =
        LogFixtures.assess(
            home,
            LogFixtures.from("2026-01-05T00:00", 600)
                .hours(12, 20, 50)
                .hours(8, 20, 58)
                .hours(4, 20, 72),
            LogFixtures.from("2026-01-05T00:00", 600).hours(24, 5, 80));
    LoggedSurface corner = surfaces(home, logs).get(0);
    assertThat(corner.loggedHours()).isCloseTo(24, within(1e-9));
    assertThat(corner.moist().likely()).isCloseTo(12, within(1e-9));
    assertThat(corner.wet().likely()).isCloseTo(4, within(1e-9));
    assertThat(corner.moist().value().low()).isLessThanOrEqualTo(12);
    assertThat(corner.wet().value().high()).isGreaterThanOrEqualTo(4);
  }

  /**
   * Frost: 4 °C indoors, -11 °C outdoors, the corner at -2 °C, where 517 Pa saturate over ice and
   * 528 over water (ISO 13788, Annex E, as in every other year and month). 64.3 % of 813 Pa is 523
   * Pa.
   */
  @Test
  void below_freezing_a_surface_is_wet_from_saturation_over_ice() {
    Home home = LogFixtures.home();
    LogsResult logs =
        LogFixtures.assess(
            home,
            LogFixtures.from("2026-01-05T00:00", 600).hours(24, 4, 64.3),
            LogFixtures.from("2026-01-05T00:00", 600).hours(24, -11, 80));
    assertThat(surfaces(home, logs).get(0).wet().likely()).isCloseTo(24, within(1e-9));
  }

  /**
   * 18 °C indoors, 24 °C outdoors: a factor of 0.55 is 20.7 °C, 0.6 is 20.4 and 0.65 is 20.1. The
   * 1918 Pa of 93 % are 80.0 % at 20.4 °C, and at 20.1 °C, where 2352 Pa saturate, 81.5 %: the
   * poorer surface is the warmer and drier one.
   */
  @Test
  void where_it_is_warmer_outdoors_a_better_surface_is_moist_for_longer() {
    Home home = LogFixtures.homeWithin(0.5);
    LogsResult logs =
        LogFixtures.assess(
            home,
            LogFixtures.from("2026-07-05T00:00", 600).hours(12, 18, 92.5).hours(12, 18, 99),
            LogFixtures.from("2026-07-05T00:00", 600).hours(24, 24, 60));
    LoggedSurface corner = surfaces(home, logs).get(0);
    assertThat(corner.moist().value().low()).isCloseTo(12, within(1e-9));
    assertThat(corner.moist().likely()).isCloseTo(12, within(1e-9));
    assertThat(corner.moist().value().high()).isCloseTo(24, within(1e-9));
  }

  /** 72 % is wet at the corner at 5 °C outdoors; four of the twelve hours lack outdoor air. */
  @Test
  void hours_without_outdoor_air_do_not_count() {
    Home home = LogFixtures.home();
    LogsResult logs =
        LogFixtures.assess(
            home,
            LogFixtures.from("2026-01-05T00:00", 600).hours(12, 20, 50).hours(12, 20, 72),
            LogFixtures.from("2026-01-05T00:00", 600).hours(16, 5, 80).gap(4).hours(4, 5, 80));
    LoggedSurface corner = surfaces(home, logs).get(0);
    assertThat(corner.loggedHours()).isCloseTo(20, within(1e-9));
    assertThat(corner.wet().likely()).isCloseTo(8, within(1e-9));
  }

  @Test
  void without_outdoor_air_of_the_same_time_nothing_is_counted() {
    Home home = LogFixtures.home();
    assertThat(surfaces(home, climate(home, 24 * 40))).isEmpty();
    assertThat(surfaces(home, LogsResult.none())).isEmpty();
  }

  private static LogsResult climate(Home home, double hours) {
    return LogsAssessor.assess(
        home,
        new Logs(
            Map.of(
                "living",
                LogFixtures.from("2026-01-05T00:00", 600).hours(hours, 20, 50).log("th1")),
            Optional.empty()),
        LogRules.bundled(),
        ReadingRules.bundled());
  }

  private static LogsResult beside(Home home, double hours) {
    return LogFixtures.assess(
        home,
        LogFixtures.from("2026-01-05T00:00", 600).hours(hours, 20, 50),
        LogFixtures.from("2026-01-05T00:00", 600).hours(hours, 5, 80));
  }

  private static IndoorVapours vapours(Home home, LogsResult logs) {
    return IndoorVapours.of(home, HumidityAssessor.assess(home, ReadingRules.bundled()), logs);
  }

  /** 50 % of 2337 Pa less 80 % of 872 Pa. */
  @Test
  void a_room_is_judged_with_the_mean_of_its_log() {
    Home home = LogFixtures.home();
    IndoorVapour vapour = vapours(home, beside(home, 48)).of("living").orElseThrow();
    assertThat(vapour.excess().likely()).isCloseTo(471, within(1.0));
    assertThat(vapour.outdoor()).isCloseTo(5, within(1e-9));
    assertThat(vapour.from())
        .isEqualTo("the mean of the log in this room over 2 days against the outdoor log");
  }

  @Test
  void a_room_without_log_takes_that_of_the_rooms_that_were_logged() {
    Home home = LogFixtures.home();
    IndoorVapour vapour = vapours(home, beside(home, 48)).of("bed").orElseThrow();
    assertThat(vapour.excess().likely()).isCloseTo(471, within(1.0));
    assertThat(vapour.from()).isEqualTo("the rooms that were logged");
    assertThat(vapours(home, LogsResult.none()).of("bed")).isEmpty();
  }

  /**
   * 50 % and 70 % of 2337 Pa at 20 °C, less 698 Pa outdoors: 471 and 938 Pa, by 75 and 25 m³. The
   * cellar is no heated room and tells nothing of the bedroom.
   */
  @Test
  void rooms_that_were_logged_count_by_their_volume_and_cellars_do_not() {
    Home home =
        HomeFixtures.home(
            """
            - {id: living, use: living, floor_area: 30 m2}
            - {id: bath, use: bathroom, floor_area: 10 m2}
            - {id: cellar, use: cellar, floor_area: 30 m2}
            - {id: bed, use: bedroom, floor_area: 12 m2}
            """);
    IndoorVapour vapour =
        vapours(
                home,
                LogsAssessor.assess(
                    home,
                    new Logs(
                        Map.of(
                            "living", flat(20, 50).log("th1"),
                            "bath", flat(20, 70).log("th1"),
                            "cellar", flat(12, 99).log("th1")),
                        Optional.of(flat(5, 80).log("th1"))),
                    LogRules.bundled(),
                    ReadingRules.bundled()))
            .of("bed")
            .orElseThrow();
    assertThat(vapour.excess().likely()).isCloseTo(0.75 * 471 + 0.25 * 938, within(1.0));
    assertThat(vapour.excess().high()).isLessThan(1100);
  }

  private static LogFixtures flat(double celsius, double percent) {
    return LogFixtures.from("2026-01-05T00:00", 600).hours(48, celsius, percent);
  }

  /** A log beside outdoor air tells more of the rest than a reading without any. */
  @Test
  void a_log_beside_outdoor_air_comes_before_readings_without_for_the_rest_too() {
    Home home = read("");
    assertThat(vapours(home, beside(home, 48)).of("bed").orElseThrow().from())
        .isEqualTo("the rooms that were logged");
    Home paired = read("{at: 2026-01-22T10:00, temperature: 4 C, humidity: 80 %}");
    assertThat(vapours(paired, beside(paired, 48)).of("bed").orElseThrow().from())
        .isEqualTo("the mean of the rooms that were read");
  }

  @Test
  void a_log_of_some_hours_is_not_leaned_on() {
    Home home = LogFixtures.home();
    assertThat(vapours(home, beside(home, 20)).of("living")).isEmpty();
  }

  private static Home read(String outdoor) {
    return HomeFixtures.of(
        HomeFixtures.read(
            """
            drysill: 1
            visit: {date: 2026-01-22}
            dwelling: {jurisdiction: england, floor_area: 84 m2}
            outdoor_readings: [OUTDOOR]
            rooms:
              - {id: living, use: living, floor_area: 20 m2, readings: [{at: 2026-01-22T10:00, temperature: 20 C, humidity: 60 %}]}
            """
                .replace("OUTDOOR", outdoor)));
  }

  @Test
  void a_reading_beside_outdoor_air_of_its_time_comes_before_a_log_without() {
    Home paired = read("{at: 2026-01-22T10:00, temperature: 4 C, humidity: 80 %}");
    Home unpaired = read("");
    assertThat(vapours(paired, climate(paired, 24 * 40)).of("living").orElseThrow().from())
        .isEqualTo("the reading in this room");
    assertThat(vapours(unpaired, climate(unpaired, 24 * 40)).of("living").orElseThrow().from())
        .startsWith("the mean of the log in this room over 40 days against the months");
  }
}
