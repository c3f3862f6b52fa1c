package org.drysill.assess.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.change.ChangeFixtures.Visit;
import org.drysill.assess.change.air.AirChange;
import org.drysill.assess.change.shown.Doubt;
import org.drysill.assess.change.shown.Shown;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.survey.Logger;
import org.drysill.survey.log.Log;
import org.drysill.survey.log.LogContent;
import org.drysill.survey.log.LogFixtures;
import org.drysill.survey.log.Logs;
import org.drysill.survey.log.SeriesBuilder;
import org.junit.jupiter.api.Test;

/** Logs of two visits, in made-up air that is the same all day. */
class LogsComparedTest {
  private static final long START =
      LocalDate.of(2026, 1, 1).atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli();
  private static final long HOUR_MS = 3_600_000;
  private static final String LIVING = "- {id: living, use: living}";

  /** Air of a day by its number, hour by hour; a negative length of a day leaves it out. */
  private interface Day {
    double[] air(int number);
  }

  private static Log log(int days, Day air) {
    SeriesBuilder series = new SeriesBuilder(3600);
    for (int day = 0; day < days; day++) {
      double[] state = air.air(day);
      for (int hour = 0; state.length > 0 && hour < 24; hour++) {
        long at = START + (day * 24L + hour) * HOUR_MS;
        series.add(at, at + HOUR_MS, state[0], state[1] / 100, Double.NaN);
      }
    }
    Logger logger =
        new Logger(
            "log.csv",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of("fine"));
    return new Log(
        logger, "", Optional.of(new LogContent(series.build(), null, null, null)), List.of());
  }

  private static Day steady(double celsius, double percent) {
    return number -> new double[] {celsius, percent};
  }

  private static Logs logs(int days, Day room) {
    return logs(log(days, room), log(days, steady(5, 80)));
  }

  private static Logs logs(Log room, Log outdoor) {
    return new Logs(Map.of("living", room), Optional.of(outdoor));
  }

  private static ChangeResult compare(Logs before, Logs after) {
    return compare(before, after, LIVING, LIVING);
  }

  private static ChangeResult compare(Logs before, Logs after, String rooms, String roomsAfter) {
    return ChangeAssessor.assess(
        ChangeFixtures.facts("2025-02-11", new Visit("", rooms, ""), before),
        ChangeFixtures.facts("2026-01-22", new Visit("", roomsAfter, ""), after),
        ChangeFixtures.RULES);
  }

  private static AirChange room(ChangeResult result) {
    return result.rooms().get(0);
  }

  private static Finding finding(ChangeResult result, String id) {
    return result.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void two_weeks_each_show_a_lasting_fall() {
    ChangeResult fell = compare(logs(14, steady(20, 60)), logs(15, steady(20, 45)));
    AirChange room = room(fell);
    assertThat(room.logged()).isTrue();
    assertThat(room.from()).isEqualTo("a log of 14.0 days before and a log of 15.0 days after");
    assertThat(room.shown()).isEqualTo(Shown.FELL);
    assertThat(room.humidity().points().likely()).isCloseTo(-0.15, within(1e-12));
    assertThat(room.humidity().fromIndoors().orElseThrow().likely())
        .isCloseTo(-0.15, within(1e-12));
    assertThat(finding(fell, "change.lasting").verdict()).isEqualTo(Verdict.MEETS);
    assertThat(finding(fell, "change.lasting").settledBy()).isEmpty();
    assertThat(fell.caution()).startsWith("Logs show the spells in which they ran.");
    assertThat(fell.outdoor().alike()).isTrue();
    assertThat(fell.outdoor().before().orElseThrow().likely()).isCloseTo(5, within(1e-9));
    assertThat(fell.outdoor().before().orElseThrow().working().formula()).contains("log of 14.0");
    assertThat(fell.home().orElseThrow().logged()).isTrue();
  }

  @Test
  void two_weeks_each_show_a_lasting_rise() {
    ChangeResult rose = compare(logs(14, steady(20, 45)), logs(14, steady(20, 60)));
    assertThat(finding(rose, "change.lasting").verdict()).isEqualTo(Verdict.SHORT);
  }

  /** The instrument errs alike on all days: 0.1 K and 0.5 points, indoors and outdoors. */
  @Test
  void steady_air_has_the_error_of_its_instruments_only() {
    AirChange room = room(compare(logs(14, steady(20, 60)), logs(14, steady(20, 60))));
    double half =
        (room.excess().before().value().high() - room.excess().before().value().low()) / 2;
    double indoors = error(20, 0.60);
    double outdoors = error(5, 0.80);
    assertThat(half).isCloseTo(Math.hypot(indoors, outdoors), within(0.01));
    assertThat(room.excess().judgement().doubt()).contains(Doubt.WITHIN_ERROR);
  }

  private static double error(double celsius, double ratio) {
    double byHumidity = 0.005 * Iso13788Vapour.saturationPressureOverWaterPa(celsius);
    double byTemperature =
        ratio
            * (Iso13788Vapour.saturationPressureOverWaterPa(celsius + 0.1)
                - Iso13788Vapour.saturationPressureOverWaterPa(celsius - 0.1))
            / 2;
    return Math.hypot(byHumidity, byTemperature);
  }

  /**
   * Days by turns at 50 and 60 %: standard deviation 5.19 points of 14 days, which tell as much as
   * 14 · 0.7/1.3 = 7.5 independent ones; t(95 %, 6) = 2.447.
   */
  @Test
  void days_that_differ_widen_the_error() {
    Day turns = number -> new double[] {20, number % 2 == 0 ? 50 : 60};
    AirChange room = room(compare(logs(14, turns), logs(14, turns)));
    double half =
        (room.excess().before().value().high() - room.excess().before().value().low()) / 2;
    double scatter = 2.447 * 0.05 * Math.sqrt(14 / 13.0) / Math.sqrt(14 * 0.7 / 1.3);
    double days = scatter * Iso13788Vapour.saturationPressureOverWaterPa(20);
    double instruments = Math.hypot(error(20, 0.55), error(5, 0.80));
    assertThat(half).isCloseTo(Math.hypot(days, instruments), within(0.2));
  }

  @Test
  void six_days_are_too_short_and_seven_are_not() {
    AirChange six = room(compare(logs(6, steady(20, 60)), logs(14, steady(20, 45))));
    assertThat(six.excess().judgement().doubt()).contains(Doubt.TOO_SHORT);
    assertThat(six.excess().judgement().criterion()).contains("a log of 6.0 days", "7 days");
    AirChange later = room(compare(logs(14, steady(20, 60)), logs(6, steady(20, 45))));
    assertThat(later.excess().judgement().doubt()).contains(Doubt.TOO_SHORT);
    AirChange seven = room(compare(logs(7, steady(20, 60)), logs(7, steady(20, 45))));
    assertThat(seven.shown()).isEqualTo(Shown.FELL);
    assertThat(
            finding(compare(logs(1, steady(20, 60)), logs(7, steady(20, 45))), "change.lasting")
                .verdict())
        .isEqualTo(Verdict.UNKNOWN);
  }

  @Test
  void a_log_full_of_gaps_does_not_stand_for_its_spell() {
    Day gaps = number -> number % 3 == 1 ? new double[] {} : new double[] {20, 60};
    AirChange room = room(compare(logs(15, gaps), logs(14, steady(20, 45))));
    assertThat(room.excess().judgement().doubt()).contains(Doubt.TOO_SHORT);
    assertThat(room.excess().judgement().criterion()).contains("a log of 10.0 days with 33 %");
  }

  @Test
  void weather_of_logs_is_held_by_its_means() {
    Logs warm = logs(log(14, steady(20, 45)), log(14, steady(10.5, 80)));
    ChangeResult unlike = compare(logs(14, steady(20, 60)), warm);
    assertThat(room(unlike).excess().judgement().doubt()).contains(Doubt.WEATHER_UNLIKE);
    assertThat(unlike.outdoor().said()).contains("5.0 °C before and 10.5 °C after");
  }

  @Test
  void logs_without_a_common_time_or_without_outdoors_or_unreadable_are_no_logs() {
    Logs room = logs(14, steady(20, 60));
    Logs alone = new Logs(room.rooms(), Optional.empty());
    assertThat(compare(room, alone).rooms()).isEmpty();
    assertThat(compare(alone, room).notCompared())
        .containsExactly("Humidity of the living: read at the later visit only");
    assertThat(compare(room, alone).notCompared())
        .containsExactly("Humidity of the living: read at the earlier visit only");
    Log empty = new Log(LogFixtures.logger("x.csv"), "", Optional.empty(), List.of());
    assertThat(compare(room, logs(empty, log(14, steady(5, 80)))).rooms()).isEmpty();
    assertThat(compare(room, logs(log(14, steady(20, 60)), empty)).rooms()).isEmpty();
    Day late = number -> number < 20 ? new double[] {} : new double[] {20, 60};
    assertThat(compare(room, logs(log(30, late), log(14, steady(5, 80)))).rooms()).isEmpty();
    Day blank = number -> new double[] {5, Double.NaN};
    assertThat(compare(room, logs(log(14, steady(20, 60)), log(14, blank))).rooms()).isEmpty();
  }

  @Test
  void a_log_is_not_held_against_a_reading() {
    ChangeResult mixed =
        compare(logs(14, steady(20, 60)), Logs.none(), LIVING, ChangeFixtures.living(20, 45));
    assertThat(mixed.rooms()).isEmpty();
    assertThat(mixed.notCompared())
        .containsExactly("Humidity of the living: read at one visit and logged at the other");
  }

  /** A home of a logged and a read room is told by its logs. */
  @Test
  void the_home_counts_logged_rooms_where_there_are_some() {
    String both =
        LIVING
            + "\n- {id: bed, use: bedroom, readings: [%s]}"
                .formatted(ChangeFixtures.reading(18, 70));
    Map<String, Log> rooms = new LinkedHashMap<>();
    rooms.put("living", log(14, steady(20, 60)));
    Logs logs = new Logs(rooms, Optional.of(log(14, steady(5, 80))));
    ChangeResult result = compare(logs, logs, both, both);
    assertThat(result.rooms()).extracting(AirChange::logged).containsExactly(true, false);
    assertThat(result.home().orElseThrow().humidity().before().likely())
        .isCloseTo(0.60, within(1e-9));
  }

  @Test
  void above_twelve_degrees_outdoors_a_home_is_not_heated() {
    Logs before = logs(log(14, steady(20, 70)), log(14, steady(13, 80)));
    Logs after = logs(log(14, steady(20, 60)), log(14, steady(13, 80)));
    ChangeResult warm = compare(before, after);
    assertThat(room(warm).excess().judgement().doubt()).contains(Doubt.TOO_WARM);
    assertThat(warm.outdoor().said()).contains("above the 12 °C up to which homes are heated");
    assertThat(warm.outdoor().alike()).isFalse();
  }
}
