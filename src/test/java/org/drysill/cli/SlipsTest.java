package org.drysill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips of those who write surveys and commands: told at their place, with what to do. */
class SlipsTest {
  private static final String SMALL =
      """
      drysill: 1
      visit: {date: 2026-01-22}
      dwelling: {jurisdiction: england, floor_area: 84 m2}
      rooms: [{id: kitchen, use: kitchen}]
      """;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder;

  @BeforeEach
  void a_survey() throws IOException {
    Files.writeString(folder.resolve("survey.yaml"), SMALL);
  }

  private int run(String arguments) {
    String[] all = arguments.replace("HERE", folder.toString()).split(" ");
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), Map.of(), false, all);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "84 m2 | 1e300 m2 | survey.yaml:3:47: error Y021 | found 1E+300 m2",
        "84 m2 | NINES m2 | survey.yaml:3:47: error Y016 | the number is too large",
        "84 m2 | NINES | survey.yaml:3:47: error Y016 | the number is too large",
        "84 m2 | NaN | survey.yaml:3:47: error Y016 | it does not begin with a number",
        "use: kitchen | use: kitchen, name: \"a\u202Eb\" | survey.yaml:4:45: error Y004 | U+202E",
        "[{id: kitchen | [{id: \"kitchen | survey.yaml:5:1: error Y006 | begins on line 4",
        "date: 2026 | photos: [{file: none.jpg}], date: 2026 | survey.yaml:2:25: error S040 | an empty file",
        "jurisdiction: england | jurisdiction: {file: latin.yaml} | latin.yaml:1:8: error Y003 | UTF-8",
        "84 m2} | '84 m2}\noptions: {measures: latin.yaml}' | latin.yaml:1:8: error Y003 | UTF-8",
        "84 m2} | '84 m2}\noptions: {measures: wide.yaml}' | wide.yaml:1:1: error Y003 | found UTF-16"
      })
  void a_slip_in_a_survey_or_its_files(String was, String becomes, String place, String said)
      throws IOException {
    Files.write(folder.resolve("none.jpg"), new byte[0]);
    Files.write(folder.resolve("latin.yaml"), "title: Ü".getBytes(StandardCharsets.ISO_8859_1));
    Files.write(folder.resolve("wide.yaml"), "title: Ü".getBytes(StandardCharsets.UTF_16));
    String text = SMALL.replace(was, becomes.replace("NINES", "9".repeat(400)));
    Files.writeString(folder.resolve("survey.yaml"), text);
    assertThat(run("check HERE/survey.yaml")).isEqualTo(1);
    assertThat(err.toString()).contains(place, said).doesNotContain("stacktrace");
  }

  @Test
  void an_earlier_survey_of_another_home() throws IOException {
    Files.writeString(
        folder.resolve("survey.yaml"), SMALL.replace("2026-01-22", "2026-01-22, previous: a.yaml"));
    String other = SMALL.replace("2026", "2025");
    Files.writeString(folder.resolve("a.yaml"), other);
    assertThat(run("check HERE/survey.yaml")).isZero();
    assertThat(err.toString()).isEmpty();
    Files.writeString(folder.resolve("a.yaml"), other.replace("id: kitchen", "id: cellar"));
    assertThat(run("check HERE/survey.yaml")).isZero();
    assertThat(err.toString())
        .contains("survey.yaml:2:37: warning S045: visit.previous", "such as kitchen");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 | report HERE/survey.yaml --sign-password-file HERE/x | without a key signs nothing",
        "2 | report HERE/survey.yaml --sign-password-env X | without a key signs nothing",
        "3 | report HERE/survey.yaml --sign HERE | cannot read: HERE: is a directory",
        "3 | verify HERE/survey.yaml --files HERE/none | none: not a folder",
        "2 | climates --near x | --near takes latitude and longitude"
      })
  void a_slip_in_a_command(int status, String command, String said) {
    assertThat(run(command)).isEqualTo(status);
    assertThat(err.toString()).contains(said.replace("HERE", folder.toString()));
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void what_is_assumed_is_told_in_sentences() {
    assertThat(run("check HERE/survey.yaml")).isZero();
    assertThat(out.toString())
        .contains(": can be used; no warning, ")
        .contains("Neither the survey nor the rule set names a climate. Name the nearest");
  }
}
