package org.drysill.assess.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.reference.ReferenceData;
import org.drysill.reference.limits.TimeLimit;
import org.drysill.reference.limits.TimeLimits;
import org.drysill.survey.HazardClass;
import org.drysill.survey.Survey;
import org.drysill.survey.Tenure;
import org.drysill.survey.TimelineEventKind;
import org.drysill.yaml.Folder;
import org.drysill.yaml.RecordReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The days of a remediation against the limits that the law of England sets social landlords. */
class TimelineAssessorTest {
  private static final TimeLimits ENGLAND = TimeLimits.all().get(0);

  private static TimelineResult assess(String visit, String dwelling, String... events) {
    StringBuilder timeline = new StringBuilder();
    for (String event : events) {
      String[] parts = event.split(" ", 2);
      timeline.append("{date: ").append(parts[0]).append(", event: ").append(parts[1]).append("},");
    }
    String text =
        "drysill: 1\nvisit: {date: 2026-06-01, "
            + visit
            + " timeline: ["
            + timeline
            + "]}\ndwelling: {floor_area: 40 m2, "
            + dwelling
            + "}\nrooms: [{id: living, use: living}]\n";
    Survey survey =
        RecordReader.read(
                Survey.class,
                text,
                "survey.yaml",
                ReferenceData.bundled().vocabularies(),
                Folder.unknown())
            .value()
            .orElseThrow();
    return TimelineAssessor.assess(survey, TimeLimits.all());
  }

  private static HeldLimits social(String... events) {
    return assess("", "jurisdiction: england, tenure: social rented", events).held().orElseThrow();
  }

  private static HeldLimit limit(HeldLimits held, String what) {
    return held.limits().stream().filter(l -> l.what().equals(what)).findFirst().orElseThrow();
  }

  private static Optional<LocalDate> day(String day) {
    return Optional.of(LocalDate.parse(day));
  }

  /** Days counted by hand on a calendar, from the day after the event. */
  @ParameterizedTest
  @CsvSource({
    // Monday; nothing but weekends between.
    "2026-01-12, 10, 2026-01-26",
    // Friday: the first working day is Monday.
    "2026-01-16, 3, 2026-01-21",
    // Saturday and Sunday count as nothing.
    "2026-01-17, 5, 2026-01-23",
    // Christmas 2025: 25, 26 December and 1 January are none.
    "2025-12-22, 5, 2025-12-31",
    "2025-12-23, 5, 2026-01-02",
    // Easter 2026: 3 and 6 April are none.
    "2026-04-01, 3, 2026-04-08",
  })
  void working_days_leave_out_weekends_and_holidays(LocalDate start, int number, LocalDate last) {
    assertThat(new WorkingDays(ENGLAND.holidays()).after(start, number)).isEqualTo(last);
  }

  @Test
  void days_on_the_last_day_are_within_and_a_day_after_it_is_later() {
    HeldLimits held =
        social(
            "2026-01-12 reported",
            "2026-01-26 investigated",
            "2026-01-30 summary sent",
            "2026-02-02 made safe",
            "2026-02-03 works ordered",
            "2026-04-20 works started");
    assertThat(held.binding()).isTrue();
    HeldLimit investigated = limit(held, "Investigate");
    assertThat(investigated.start()).isEqualTo(day("2026-01-12"));
    assertThat(investigated.lastDay()).isEqualTo(day("2026-01-26"));
    assertThat(investigated.standing()).isEqualTo(Standing.WITHIN);
    HeldLimit summary = limit(held, "Give a written summary");
    assertThat(summary.lastDay()).isEqualTo(day("2026-01-29"));
    assertThat(summary.standing()).isEqualTo(Standing.LATER);
    assertThat(summary.daysLate()).isEqualTo(1);
    assertThat(limit(held, "Make safe").standing()).isEqualTo(Standing.WITHIN);
    assertThat(limit(held, "Take steps to begin further works").daysLate()).isEqualTo(1);
    HeldLimit works = limit(held, "Begin further works on site");
    assertThat(works.lastDay()).isEqualTo(day("2026-04-20"));
    assertThat(works.standing()).isEqualTo(Standing.WITHIN);
    assertThat(works.because()).isEmpty();
  }

  @Test
  void what_the_timeline_does_not_have_is_not_told_and_not_late() {
    HeldLimits held = social("2026-01-12 reported", "2026-01-20 investigated");
    HeldLimit safe = limit(held, "Make safe");
    assertThat(safe.standing()).isEqualTo(Standing.NOT_TOLD);
    assertThat(safe.lastDay()).isEqualTo(day("2026-01-27"));
    assertThat(safe.because()).contains("made safe");
    assertThat(safe.daysLate()).isZero();
    HeldLimits unreported = social("2026-01-20 investigated", "2026-01-21 summary sent");
    assertThat(unreported.begins()).isEqualTo(LocalDate.of(2026, 1, 20));
    HeldLimit investigated = limit(unreported, "Investigate");
    assertThat(investigated.standing()).isEqualTo(Standing.NOT_TOLD);
    assertThat(investigated.lastDay()).isEmpty();
    assertThat(investigated.because()).contains("reported");
    assertThat(limit(unreported, "Give a written summary").standing()).isEqualTo(Standing.WITHIN);
  }

  @Test
  void a_story_begins_with_its_first_report_whatever_the_order_in_the_file() {
    HeldLimits held =
        social(
            "2026-02-20 investigated",
            "2025-11-03 investigated",
            "2026-02-16 reported",
            "2026-03-02 reported");
    assertThat(held.begins()).isEqualTo(LocalDate.of(2026, 2, 16));
    assertThat(limit(held, "Investigate").done()).isEqualTo(day("2026-02-20"));
  }

  @ParameterizedTest
  @CsvSource({"2026-01-12, WITHIN, 0", "2026-01-13, NOT_TOLD, 0", "2026-01-15, LATER, 2"})
  void days_alone_tell_hours_only_in_part(String safe, Standing standing, int late) {
    HeldLimits held =
        assess(
                "hazard: emergency,",
                "jurisdiction: england, tenure: social rent",
                "2026-01-12 reported",
                safe + " made safe")
            .held()
            .orElseThrow();
    assertThat(held.hazardStated()).isTrue();
    HeldLimit limit = limit(held, "Make safe");
    assertThat(limit.length()).isEqualTo("24\u00a0hours");
    assertThat(limit.standing()).isEqualTo(standing);
    assertThat(limit.daysLate()).isEqualTo(late);
    assertThat(limit.because())
        .isEqualTo(late == 0 && standing != Standing.WITHIN ? "days alone do not tell hours" : "");
  }

  @Test
  void before_their_first_day_limits_do_not_bind() {
    assertThat(social("2025-10-26 reported").binding()).isFalse();
    assertThat(social("2025-10-27 reported").binding()).isTrue();
    assertThat(social("2025-10-26 reported").hazardStated()).isFalse();
    assertThat(social("2025-10-26 reported").hazard()).isEqualTo("significant");
  }

  @Test
  void past_the_days_whose_holidays_are_known_it_is_said() {
    assertThat(social("2026-01-12 reported").holidaysKnown()).isTrue();
    assertThat(social("2027-12-20 reported").holidaysKnown()).isFalse();
  }

  @Test
  void where_no_limits_are_known_it_is_said() {
    String report = "2026-01-12 reported";
    assertThat(assess("", "jurisdiction: england, tenure: private rent", report))
        .isEqualTo(
            new TimelineResult(
                Optional.empty(),
                "For a home that is private rented in this place no limits of time are known to this"
                    + " program. Check the law in force."));
    assertThat(assess("", "jurisdiction: scotland, tenure: social rented", report).said())
        .contains("no limits of time are known");
    assertThat(assess("", "jurisdiction: england", report).said())
        .contains("does not say whether the home is rented");
    assertThat(assess("", "jurisdiction: england, tenure: social rented"))
        .isEqualTo(new TimelineResult(Optional.empty(), ""));
  }

  @Test
  void every_word_of_the_data_is_a_word_of_the_survey() {
    List<String> events =
        Arrays.stream(TimelineEventKind.values()).map(TimelineEventKind::word).toList();
    List<String> hazards = Arrays.stream(HazardClass.values()).map(HazardClass::word).toList();
    List<String> tenures = Arrays.stream(Tenure.values()).map(Tenure::word).toList();
    for (TimeLimits limits : TimeLimits.all()) {
      assertThat(tenures).containsAll(limits.tenures());
      assertThat(ReferenceData.bundled().rules().ids()).containsAll(limits.jurisdictions());
      assertThat(events)
          .containsAll(
              limits.limits().stream().flatMap(l -> Stream.of(l.from(), l.until())).toList());
      assertThat(hazards)
          .containsAll(
              limits.limits().stream().map(TimeLimit::hazard).flatMap(Optional::stream).toList());
      assertThat(limits.holidays().days()).isSorted().doesNotHaveDuplicates();
    }
  }
}
