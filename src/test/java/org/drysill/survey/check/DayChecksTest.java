package org.drysill.survey.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drysill.Drysill;
import org.drysill.survey.VisitDay;
import org.drysill.yaml.Problem;
import org.drysill.yaml.ProblemText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days of years that cannot be meant are told at their place. */
class DayChecksTest {
  private static final String SURVEY =
      """
      drysill: 1
      visit:
        date: 2026-01-22
        timeline: [{date: 2025-02-03, event: reported}]
      dwelling: {jurisdiction: england, floor_area: 84 m2}
      outdoor_readings: [{at: 2026-01-22T09:40, temperature: 3 C}]
      outdoor_logger: {file: out.csv}
      rooms: [{id: kitchen, use: kitchen}]
      """;

  @TempDir private Path folder;

  private Drysill.Outcome checked(String text, LocalDate logged) throws IOException {
    Files.writeString(folder.resolve("out.csv"), log(logged.atTime(12, 0)));
    return Drysill.check(Files.writeString(folder.resolve("survey.yaml"), text));
  }

  private static String log(LocalDateTime from) {
    return IntStream.range(0, 48)
        .mapToObj(hour -> from.plusHours(hour).toString().replace('T', ' ') + ",3.1,88")
        .collect(Collectors.joining("\n", "Time,Temperature (C),Humidity (%)\n", "\n"));
  }

  @ParameterizedTest
  @CsvSource({
    "date: 2026-01-22, date: 2199-01-22, 3:9, visit.date",
    "date: 2026-01-22, date: 0206-01-22, 3:9, visit.date",
    "2025-02-03, 1825-02-03, 4:21, visit.timeline[0].date",
    "2026-01-22T09:40, 2126-01-22T09:40, 6:25, outdoor_readings[0].at"
  })
  void a_year_in_which_nobody_measures_is_refused(
      String was, String becomes, String place, String key) throws IOException {
    Drysill.Outcome outcome = checked(SURVEY.replace(was, becomes), LocalDate.of(2026, 1, 20));
    assertThat(outcome.problems())
        .extracting(p -> p.code() + " " + p.place().line() + ":" + p.place().column())
        .containsExactly("Y021 " + place);
    assertThat(ProblemText.of(outcome.problems().get(0)))
        .contains(key, "a day of the years 1900 to 2099");
  }

  @Test
  void a_log_of_another_year_is_told_and_used_all_the_same() throws IOException {
    assertThat(checked(SURVEY, LocalDate.of(2027, 1, 22)).problems()).isEmpty();
    Drysill.Outcome outcome = checked(SURVEY, LocalDate.of(2028, 1, 20));
    assertThat(outcome.problems()).extracting(Problem::code).containsExactly("L011");
    assertThat(ProblemText.of(outcome.problems().get(0)))
        .contains("out.csv:1", "readings from 2028-01-20 to 2028-01-22", "the visit of 2026-01-22");
    assertThat(outcome.logs().outdoor().orElseThrow().content()).isPresent();
    assertThat(checked(SURVEY, LocalDate.of(2025, 1, 21)).problems()).isEmpty();
    assertThat(checked(SURVEY, LocalDate.of(2025, 1, 19)).problems()).hasSize(1);
  }

  @Test
  void a_visit_that_is_yet_to_come_is_told_to_who_knows_what_day_it_is() throws IOException {
    VisitDay day = checked(SURVEY, LocalDate.of(2026, 1, 20)).day().orElseThrow();
    assertThat(day.problemOn(LocalDate.of(2026, 1, 22))).isEmpty();
    assertThat(day.problemOn(LocalDate.of(2026, 1, 21))).isEmpty();
    Problem problem = day.problemOn(LocalDate.of(2026, 1, 20)).orElseThrow();
    assertThat(ProblemText.of(problem))
        .contains("survey.yaml:3:9: warning S043: visit.date: found 2026-01-22", "2026-01-20");
  }
}
