package org.drysill.assess.logs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drysill.assess.Basis;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.physics.air.MoistAir;
import org.drysill.survey.log.Logs;
import org.junit.jupiter.api.Test;

/** Means of small logs, reckoned by hand. */
class LogMeansTest {
  private static final int TEN_MINUTES = 600;

  private static LoggedRoom living(LogFixtures living, LogFixtures outdoors) {
    return LogFixtures.assess(LogFixtures.home(), living, outdoors).rooms().get(0);
  }

  private static double content(double celsius, double percent) {
    return MoistAir.vapourContentKgM3(celsius, MoistAir.vapourPressurePa(celsius, percent / 100));
  }

  @Test
  void a_mean_counts_each_reading_for_as_long_as_it_holds() {
    LoggedRoom room =
        living(
            LogFixtures.from("2026-01-05T00:00", TEN_MINUTES).hours(6, 20, 40).hours(18, 16, 60),
            LogFixtures.from("2026-01-05T00:00", TEN_MINUTES).hours(24, 5, 80));
    assertThat(room.temperature().likely()).isCloseTo(17, within(1e-9));
    assertThat(room.relativeHumidity().likely()).isCloseTo(0.55, within(1e-9));
    assertThat(room.days()).isCloseTo(1, within(1e-9));
    double excess = (content(20, 40) + 3 * content(16, 60)) / 4 - content(5, 80);
    assertThat(room.excess().likely()).isCloseTo(excess, within(1e-9));
    assertThat(room.byDay()).hasSize(1);
    assertThat(room.byDay().get(0).excessKgM3().orElseThrow()).isCloseTo(excess, within(1e-9));
    assertThat(room.byDay().get(0).coverage()).isCloseTo(1, within(1e-9));
  }

  /** The bounds are those of one reading: ±2.5 points and ±0.4 K do not shrink in a month. */
  @Test
  void no_number_of_readings_makes_the_error_of_the_instrument_smaller() {
    LoggedRoom room =
        living(
            LogFixtures.from("2026-01-01T00:00", 3600).hours(31 * 24, 20, 50),
            LogFixtures.from("2026-01-01T00:00", 3600).hours(31 * 24, 5, 80));
    assertThat(room.relativeHumidity().value().high()).isCloseTo(0.525, within(1e-9));
    assertThat(room.temperature().value().low()).isCloseTo(19.6, within(1e-9));
    // By hand: 2.5 points of 2337 Pa are 58 Pa, 0.4 K 29 Pa; outdoors 22 and 19 Pa; together 71 Pa.
    double half = room.excessPressure().value().high() - room.excessPressure().likely();
    assertThat(half).isCloseTo(71, within(2.0));
    assertThat(room.excess().basis()).isEqualTo(Basis.CALCULATED);
  }

  /** While readings lack, neither the room nor the outdoor air of that time counts. */
  @Test
  void the_excess_is_of_hours_in_which_both_were_logged() {
    LoggedRoom room =
        living(
            LogFixtures.from("2026-01-05T00:00", TEN_MINUTES)
                .hours(12, 20, 50)
                .gap(2)
                .hours(10, 20, 50),
            LogFixtures.from("2026-01-05T00:00", TEN_MINUTES)
                .hours(12, 5, 80)
                .hours(2, 15, 80)
                .hours(10, 5, 80));
    assertThat(room.excess().likely()).isCloseTo(content(20, 50) - content(5, 80), within(1e-9));
    assertThat(room.outdoorTemperature().likely()).isCloseTo(5, within(1e-9));
    assertThat(room.byDay().get(0).hours()).isCloseTo(22, within(1e-9));
  }

  /** On 29 March 2026 the clocks go forward: the day has 23 hours, and weeks begin on Mondays. */
  @Test
  void a_day_is_that_of_the_clock_of_the_place() {
    LoggedRoom room =
        living(
            LogFixtures.from("2026-03-28T00:00", 3600).hours(24 + 23 + 24, 20, 50),
            LogFixtures.from("2026-03-28T00:00", 3600).hours(24 + 23 + 24, 8, 80));
    assertThat(room.byDay()).extracting(PeriodMeans::hours).containsExactly(24.0, 23.0, 24.0);
    assertThat(room.byDay()).extracting(PeriodMeans::coverage).containsOnly(1.0);
    assertThat(room.byWeek())
        .extracting(PeriodMeans::from)
        .containsExactly(LocalDate.of(2026, 3, 23), LocalDate.of(2026, 3, 30));
    assertThat(room.byMonth()).hasSize(1);
    assertThat(room.byMonth().get(0).coverage()).isCloseTo(71.0 / (31 * 24 - 1), within(1e-9));
    assertThat(room.typicalDay()).hasSize(24);
  }

  @Test
  void the_typical_day_tells_mean_and_spread_of_each_hour() {
    LogFixtures log = LogFixtures.from("2026-01-01T00:00", 3600);
    for (int day = 0; day < 11; day++) {
      log.hours(7, 18, 60).hours(1, 18, 60 + day).hours(16, 18, 60);
    }
    LoggedRoom room = living(log, LogFixtures.from("2026-01-01T00:00", 3600).hours(11 * 24, 5, 80));
    HourOfDay seven = room.typicalDay().get(7);
    assertThat(seven.hour()).isEqualTo(7);
    assertThat(seven.humidity()).isCloseTo(0.65, within(1e-9));
    assertThat(seven.humidityLow()).isCloseTo(0.61, within(1e-9));
    assertThat(seven.humidityHigh()).isCloseTo(0.69, within(1e-9));
    assertThat(room.typicalDay().get(8).humidityHigh()).isCloseTo(0.60, within(1e-9));
  }

  @Test
  void a_month_has_a_class_where_it_is_covered_well_enough() {
    // 2026-01-03 to 2026-02-05: January for 29 of 31 days, February for 5 of 28.
    LoggedRoom room =
        living(
            LogFixtures.from("2026-01-03T00:00", 3600).hours(34 * 24, 20, 55),
            LogFixtures.from("2026-01-03T00:00", 3600).hours(34 * 24, 0, 85));
    assertThat(room.classes()).hasSize(1);
    MonthClass january = room.classes().get(0);
    assertThat(january.calendar()).isTrue();
    assertThat(january.means().from()).isEqualTo(LocalDate.of(2026, 1, 1));
    // 55 % of 2337 Pa less 85 % of 611 Pa is 766 Pa: class 3 ends at 810, the errors reach beyond.
    assertThat(january.humidityClass().likely()).isEqualTo(3);
    assertThat(january.humidityClass().lowest()).isEqualTo(3);
    assertThat(january.humidityClass().highest()).isEqualTo(4);
  }

  @Test
  void a_month_across_two_of_the_calendar_is_taken_by_its_last_days() {
    LoggedRoom room =
        living(
            LogFixtures.from("2025-12-20T00:00", 3600).hours(30 * 24, 20, 50),
            LogFixtures.from("2025-12-20T00:00", 3600).hours(30 * 24, 0, 85));
    assertThat(room.classes()).hasSize(1);
    assertThat(room.classes().get(0).calendar()).isFalse();
    assertThat(room.classes().get(0).means().from()).isEqualTo(LocalDate.of(2025, 12, 20));
  }

  @Test
  void of_a_longer_log_the_last_thirty_days_are_taken() {
    LoggedRoom room =
        living(
            LogFixtures.from("2025-12-12T00:00", 3600).hours(6 * 24, 20, 70).hours(30 * 24, 20, 50),
            LogFixtures.from("2025-12-12T00:00", 3600).hours(36 * 24, 0, 85));
    assertThat(room.classes()).hasSize(1);
    assertThat(room.classes().get(0).means().from()).isEqualTo(LocalDate.of(2025, 12, 18));
    assertThat(room.classes().get(0).means().humidity()).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void a_week_or_a_warm_month_has_no_class() {
    LoggedRoom week =
        living(
            LogFixtures.from("2026-01-05T00:00", 3600).hours(7 * 24, 20, 50),
            LogFixtures.from("2026-01-05T00:00", 3600).hours(7 * 24, 0, 85));
    LoggedRoom warm =
        living(
            LogFixtures.from("2026-07-01T00:00", 3600).hours(31 * 24, 24, 50),
            LogFixtures.from("2026-07-01T00:00", 3600).hours(31 * 24, 21, 60));
    assertThat(week.classes()).isEmpty();
    assertThat(warm.classes()).isEmpty();
  }

  @Test
  void time_above_a_humidity_has_the_error_of_the_hygrometer() {
    LoggedRoom room =
        living(
            LogFixtures.from("2026-01-05T00:00", 3600)
                .hours(4, 18, 58)
                .hours(3, 18, 61)
                .hours(2, 18, 66)
                .hours(15, 18, 50),
            LogFixtures.from("2026-01-05T00:00", 3600).hours(24, 5, 80));
    TimeAbove sixty = room.above().get(0);
    assertThat(sixty.limit()).isEqualTo(0.6);
    assertThat(sixty.time().value().low()).isCloseTo(2, within(1e-9));
    assertThat(sixty.time().likely()).isCloseTo(5, within(1e-9));
    assertThat(sixty.time().value().high()).isCloseTo(9, within(1e-9));
    assertThat(sixty.share().likely()).isCloseTo(5.0 / 24, within(1e-9));
  }

  private static Map<String, Verdict> verdicts(LoggedRoom room) {
    return room.criteria().stream()
        .collect(
            Collectors.toMap(f -> f.id().substring(f.id().lastIndexOf('.') + 1), Finding::verdict));
  }

  /** Limits of 85 % over a day, 75 % over a week, 65 % over a month, ±2.5 points. */
  @Test
  void moving_averages_are_held_against_their_published_limits() {
    LogFixtures log = LogFixtures.from("2026-01-01T00:00", 3600);
    log.hours(12 * 24, 18, 60).hours(24, 18, 95).hours(15 * 24, 18, 60);
    LoggedRoom room = living(log, LogFixtures.from("2026-01-01T00:00", 3600).hours(28 * 24, 5, 80));
    assertThat(verdicts(room))
        .containsEntry("day", Verdict.SHORT)
        .containsEntry("week", Verdict.MEETS)
        .containsEntry("month", Verdict.MEETS);
    Finding day = room.criteria().stream().filter(f -> f.id().endsWith("day")).findFirst().get();
    assertThat(day.provided().orElseThrow().likely()).isCloseTo(0.95, within(1e-9));
  }

  @Test
  void near_a_limit_the_error_of_the_instrument_decides() {
    LoggedRoom room =
        living(
            LogFixtures.from("2026-01-01T00:00", 3600).hours(28 * 24, 18, 64),
            LogFixtures.from("2026-01-01T00:00", 3600).hours(28 * 24, 5, 80));
    assertThat(verdicts(room)).containsEntry("month", Verdict.UNKNOWN);
    assertThat(room.criteria())
        .filteredOn(f -> f.id().endsWith("month"))
        .allMatch(f -> f.because().contains("error decides") && f.settledBy().isPresent());
  }

  @Test
  void a_short_log_cannot_judge_a_month() {
    LoggedRoom room =
        living(
            LogFixtures.from("2026-01-05T00:00", 3600).hours(3 * 24, 18, 60),
            LogFixtures.from("2026-01-05T00:00", 3600).hours(3 * 24, 5, 80));
    assertThat(verdicts(room))
        .containsEntry("day", Verdict.MEETS)
        .containsEntry("week", Verdict.UNKNOWN)
        .containsEntry("month", Verdict.UNKNOWN);
  }

  @Test
  void steps_of_two_logs_are_brought_together() {
    LoggedRoom room =
        living(
            LogFixtures.from("2026-01-05T00:00", 600).hours(24, 20, 50),
            LogFixtures.from("2026-01-05T00:00", 1500).hours(12, 4, 80).hours(12, 6, 80));
    assertThat(room.trace().stepS()).isEqualTo(1500);
    assertThat(room.outdoorTemperature().likely()).isCloseTo(5, within(0.02));
    assertThat(Arrays.stream(new int[] {0, 10, 50}).mapToDouble(room.trace()::celsius))
        .containsOnly(20.0);
  }

  @Test
  void a_log_without_humidity_says_nothing_here() {
    LogsResult result =
        LogFixtures.assess(
            LogFixtures.home(),
            LogFixtures.from("2026-01-05T00:00", 600).hours(24, 20, Double.NaN),
            LogFixtures.from("2026-01-05T00:00", 600).hours(24, 5, 80));
    assertThat(result.rooms()).isEmpty();
    assertThat(result.accounts()).hasSize(2);
    assertThat(result.isEmpty()).isFalse();
  }

  @Test
  void a_log_that_cannot_be_used_is_told_with_its_line() {
    LogsResult result =
        LogsAssessor.assess(
            LogFixtures.home(),
            new Logs(
                Map.of("living", LogFixtures.unusable(7, "one of RH")),
                Optional.of(LogFixtures.unusable(0, ""))),
            LogFixtures.RULES,
            LogFixtures.READINGS);
    assertThat(result.rooms()).isEmpty();
    assertThat(result.isEmpty()).isFalse();
    assertThat(result.unused().get(0).reasons())
        .isEqualTo(List.of("line 7: no column of humidity; expected one of RH"));
    assertThat(result.unused().get(1).reasons()).isEqualTo(List.of("no column of humidity"));
    assertThat(LogsResult.none().isEmpty()).isTrue();
  }
}
