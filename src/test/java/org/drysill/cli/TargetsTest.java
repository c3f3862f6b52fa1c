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
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing that is read is ever written over, and what cannot be written is told at once. */
class TargetsTest {
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
  private Path survey;
  private Path earlier;

  @BeforeEach
  void surveys() throws IOException {
    survey = Files.writeString(folder.resolve("survey.yaml"), SMALL);
    earlier = Files.writeString(folder.resolve("before.yaml"), SMALL.replace("2026", "2025"));
  }

  private int run(String arguments) {
    String[] all = arguments.replace("HERE", folder.toString()).split(" ");
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), Map.of(), false, all);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "report HERE/survey.yaml -o HERE/survey.yaml",
        "report HERE/survey.yaml --json HERE/./survey.yaml",
        "report HERE/survey.yaml --html HERE/survey.yaml",
        "sheet HERE/survey.yaml -o HERE/survey.yaml",
        "sheet HERE/survey.yaml --html HERE/survey.yaml",
        "compare HERE/before.yaml HERE/survey.yaml -o HERE/before.yaml",
        "compare HERE/before.yaml HERE/survey.yaml --json HERE/survey.yaml",
        "compare HERE/before.yaml HERE/survey.yaml --html HERE/survey.yaml"
      })
  void a_survey_is_not_written_over(String arguments) throws IOException {
    assertThat(run(arguments)).isEqualTo(2);
    assertThat(err.toString()).contains("is read by this command already");
    assertThat(survey).hasContent(SMALL);
    assertThat(earlier).hasContent(SMALL.replace("2026", "2025"));
    assertThat(folder.toFile().list()).hasSize(2);
  }

  @Test
  void nor_by_another_name_of_the_same_file() throws IOException {
    Files.createSymbolicLink(folder.resolve("other.yaml"), survey);
    assertThat(run("report HERE/survey.yaml -o HERE/other.yaml")).isEqualTo(2);
    assertThat(survey).hasContent(SMALL);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "report HERE/survey.yaml -o HERE/a --json HERE/a",
        "report HERE/survey.yaml --html HERE/survey.pdf",
        "sheet HERE/survey.yaml -o HERE/a --html HERE/a",
        "compare HERE/before.yaml HERE/survey.yaml -o HERE/a --json HERE/a"
      })
  void two_outputs_are_not_one_file(String arguments) {
    assertThat(run(arguments)).isEqualTo(2);
    assertThat(err.toString()).contains("is written by this command already");
    assertThat(folder.toFile().list()).hasSize(2);
  }

  @Test
  void a_folder_is_no_output() {
    assertThat(run("report HERE/survey.yaml -o HERE")).isEqualTo(2);
    assertThat(err.toString()).contains("is a folder; give the name of a file in it");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "report HERE/survey.yaml -o HERE/gone/a.pdf",
        "report HERE/survey.yaml --json HERE/gone/a.json",
        "sheet HERE/survey.yaml -o HERE/gone/a.pdf",
        "compare HERE/before.yaml HERE/survey.yaml -o HERE/gone/a.pdf"
      })
  void a_folder_that_is_not_there_is_told_before_anything_is_written(String arguments) {
    assertThat(run(arguments)).isEqualTo(3);
    assertThat(err.toString()).startsWith("cannot write: there is no folder ").contains("gone");
    assertThat(folder.toFile().list()).hasSize(2);
  }

  @Test
  void a_survey_that_is_not_there_is_told_as_such() {
    assertThat(run("report HERE/gone/survey.yaml")).isEqualTo(1);
    assertThat(run("report /")).isEqualTo(1);
    assertThat(run("sheet HERE/gone/survey.yaml")).isEqualTo(1);
    assertThat(err.toString()).contains("Y001");
  }
}
