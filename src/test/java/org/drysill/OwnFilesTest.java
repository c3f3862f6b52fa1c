package org.drysill;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnFilesTest {
  @TempDir private Path folder;

  private Path survey(String jurisdiction, String climate) throws IOException {
    return Files.writeString(
        folder.resolve("survey.yaml"),
        """
        drysill: 1
        visit: {date: 2026-01-22}
        dwelling: {jurisdiction: %s, climate: %s, floor_area: 50 m2}
        rooms: [{id: kitchen, use: kitchen}]
        """
            .formatted(jurisdiction, climate));
  }

  @Test
  void a_rule_set_of_ones_own_governs_the_report() throws IOException {
    Files.writeString(
        folder.resolve("mine.yaml"),
        DataFiles.text("rules/england.yaml").replaceFirst("(?m)^id: .*$", "id: house-rules"));
    Drysill.Made made = Drysill.report(survey("{file: mine.yaml}", "uk-midlands"));
    assertThat(made.problems()).isEmpty();
    String json =
        new String(made.report().orElseThrow().json(), java.nio.charset.StandardCharsets.UTF_8);
    assertThat(json).contains("house-rules");
  }

  @Test
  void a_rule_set_that_does_not_read_is_told_with_its_place() throws IOException {
    Files.writeString(folder.resolve("mine.yaml"), "id: mine\ntitel: x\n");
    Drysill.Outcome outcome = Drysill.check(survey("{file: mine.yaml}", "uk-midlands"));
    assertThat(outcome.home()).isEmpty();
    assertThat(outcome.problems())
        .anySatisfy(
            p -> {
              assertThat(p.severity()).isEqualTo(Problem.Severity.ERROR);
              assertThat(p.place().file()).isEqualTo("mine.yaml");
              assertThat(p.place().line()).isEqualTo(2);
            });
  }

  @Test
  void a_rule_set_with_a_negative_rate_makes_no_report() throws IOException {
    String text =
        DataFiles.text("rules/sweden.yaml")
            .replaceFirst("(?m)^id: .*$", "id: mine")
            .replaceFirst("rate: 0\\.35 l/s", "rate: -0.35 l/s");
    Files.writeString(folder.resolve("mine.yaml"), text);
    Drysill.Made made = Drysill.report(survey("{file: mine.yaml}", "uk-midlands"));
    assertThat(made.report()).isEmpty();
    assertThat(made.problems())
        .anySatisfy(
            p -> {
              assertThat(p.place().file()).isEqualTo("mine.yaml");
              assertThat(p.place().line()).isGreaterThan(1);
              assertThat(p.place().column()).isGreaterThan(1);
              assertThat(p.sourceLine()).contains("-0.35");
            });
  }

  @Test
  void logs_are_read_and_their_state_is_told() throws IOException {
    Files.writeString(
        folder.resolve("log.csv"),
        "Date,Temp,RH\n2026-01-21 10:00,19,60\n2026-01-21 10:05,19,oops\n2026-01-21 10:10,19,61\n");
    Path file = survey("england", "uk-midlands");
    Files.writeString(
        file, Files.readString(file).replace("use: kitchen", "use: kitchen, logger: log.csv"));
    Drysill.Outcome outcome = Drysill.check(file);
    assertThat(outcome.problems()).isEmpty();
    assertThat(outcome.logs().room("kitchen")).isPresent();
    assertThat(outcome.logLines())
        .containsExactly(
            "Log of kitchen, log.csv: 3 rows, 3 used, 2026-01-21 10:00 to 2026-01-21 10:10, mostly"
                + " 5 min apart",
            "  read as time \"Date\", temperature \"Temp\", humidity \"RH\"; °C (assumed), clock UTC"
                + " (assumed)",
            "  1 x L105 A value that is no number (humidity): not used; line 3");
  }

  @Test
  void a_log_that_cannot_be_used_leaves_the_rest_of_the_report() throws IOException {
    Files.writeString(folder.resolve("log.csv"), "Date,Temp,RH\n2026-01-21 10:00,19,60\n");
    Path file = survey("england", "uk-midlands");
    Files.writeString(
        file,
        Files.readString(file)
            .replace(
                "use: kitchen", "use: kitchen, logger: {file: log.csv, columns: {humidity: RF}}"));
    Drysill.Outcome outcome = Drysill.check(file);
    assertThat(outcome.home()).isPresent();
    assertThat(outcome.problems()).hasSize(1);
    Problem problem = outcome.problems().get(0);
    assertThat(problem.severity()).isEqualTo(Problem.Severity.WARNING);
    assertThat(problem.place().file()).isEqualTo("log.csv");
    assertThat(problem.suggestion()).contains("RH");
    assertThat(outcome.logLines())
        .containsExactly("Log of kitchen, log.csv: cannot be used; the rest can");
  }

  @Test
  void what_a_survey_says_of_a_log_is_checked_where_it_stands() throws IOException {
    Files.writeString(folder.resolve("log.csv"), "Date,Temp,RH\n2026-01-21 10:00,19,60\n");
    Path file = survey("england", "uk-midlands");
    Files.writeString(
        file,
        Files.readString(file)
            .replace(
                "use: kitchen",
                "use: kitchen, logger: {file: log.csv, zone: Europe/Londn, time_pattern: HH:mm,"
                    + " delimiter: ';;', decimal_mark: x}"));
    assertThat(Drysill.check(file).problems())
        .extracting(Problem::code)
        .containsExactlyInAnyOrder("S036", "S037", "S038", "S038");
    assertThat(Drysill.check(file).problems())
        .anySatisfy(p -> assertThat(p.suggestion()).contains("Europe/London"));
  }

  @Test
  void a_weather_file_that_is_none_is_told_and_stops_the_work() throws IOException {
    Files.writeString(folder.resolve("weather.epw"), "LOCATION,Nowhere\n1,2,3\n");
    Drysill.Outcome outcome = Drysill.check(survey("england", "{file: weather.epw}"));
    assertThat(outcome.home()).isEmpty();
    assertThat(outcome.problems()).isNotEmpty();
    assertThat(outcome.problems().get(0).place().file()).isEqualTo("weather.epw");
  }
}
