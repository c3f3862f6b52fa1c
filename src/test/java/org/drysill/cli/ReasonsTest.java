package org.drysill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What cannot be read or written is told with its reason. */
class ReasonsTest {
  private static final String SMALL =
      """
      drysill: 1
      visit: {date: 2026-01-22, KEY}
      dwelling: {jurisdiction: england, floor_area: 84 m2}
      rooms: [{id: kitchen, use: kitchen}]
      """;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder;

  @BeforeEach
  void a_survey() throws IOException {
    String plain = SMALL.replace(", KEY", "");
    Files.writeString(folder.resolve("survey.yaml"), plain);
    Files.createDirectories(folder.resolve("some"));
  }

  private int run(String arguments) {
    String[] all = arguments.replace("HERE", folder.toString()).split(" ");
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), Map.of(), false, all);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 | check HERE/none.yaml | found no such file",
        "1 | check HERE/some | found a folder",
        "1 | verify HERE/some | is a folder",
        "1 | verify HERE/none.pdf | is not there",
        "2 | report HERE/survey.yaml -o HERE/some | is a folder",
        "3 | report HERE/survey.yaml --templates HERE/none | none: no such file or folder",
        "3 | report HERE/survey.yaml --templates HERE/survey.yaml | survey.yaml: not a folder",
        "3 | report HERE/survey.yaml --sign HERE/none.p12 | none.p12: no such file or folder",
        "3 | sheet HERE/survey.yaml --templates HERE/none | none: no such file or folder"
      })
  void every_refusal_has_its_reason(int status, String arguments, String reason) {
    assertThat(run(arguments)).isEqualTo(status);
    assertThat(err.toString()).contains(reason);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "photos: [{file: some}] | \"some\", which is a folder",
        "photos: [{file: gone.jpg}] | \"gone.jpg\", expected an existing file",
        "previous: some | some, which is a folder",
        "previous: none.yaml | none.yaml: no such file",
        "previous: survey.yaml | survey.yaml, which is this file"
      })
  void so_has_every_file_that_a_survey_names(String key, String reason) throws IOException {
    Files.writeString(folder.resolve("survey.yaml"), SMALL.replace("KEY", key));
    assertThat(run("check HERE/survey.yaml")).isEqualTo(1);
    assertThat(err.toString()).contains(reason).contains("survey.yaml:2:");
  }

  @Test
  void a_file_that_the_machine_refuses_is_told_by_the_name_that_was_asked_for() {
    String name = "long".repeat(70) + ".pdf";
    assertThat(run("sheet HERE/survey.yaml -o HERE/" + name)).isEqualTo(3);
    assertThat(err.toString()).contains("cannot write: ", "/" + name + ": file name too long");
  }
}
