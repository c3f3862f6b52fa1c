package org.drysill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder;

  private int run(String... arguments) {
    return Main.run(
        new PrintWriter(out, true), new PrintWriter(err, true), Map.of(), false, arguments);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1930s-terrace/survey.yaml",
        "owners-bungalow/survey.yaml",
        "top-floor-flat/survey.yaml",
        "top-floor-flat/before/survey.yaml"
      })
  void every_example_can_be_used(String example) {
    assertThat(run("check", "example-surveys/" + example)).as(() -> err.toString()).isZero();
    assertThat(out.toString()).contains(": can be used;");
    assertThat(err.toString()).doesNotContain(": error ");
  }

  @Test
  void what_the_survey_leaves_open_is_said() {
    assertThat(run("check", "example-surveys/owners-bungalow/survey.yaml")).isZero();
    assertThat(out.toString())
        .contains("Air leakage: 11..16 /h at 50 Pa")
        .contains("horizon: 20 years");
  }

  @Test
  void a_wrong_survey_is_told_with_its_place_and_ends_with_1() throws IOException {
    Path survey = folder.resolve("survey.yaml");
    Files.writeString(
        survey,
        """
        drysill: 1
        visit: {date: 2026-01-22}
        dwelling: {jurisdiction: england, flor_area: 84 m2}
        rooms: [{id: kitchen, use: kitchen}]
        """);
    assertThat(run("check", survey.toString())).isEqualTo(1);
    assertThat(err.toString())
        .contains("survey.yaml:3:")
        .contains("floor_area")
        .contains("nothing was written");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void a_missing_file_is_a_problem_and_no_trace() {
    assertThat(run("check", folder.resolve("nowhere.yaml").toString())).isEqualTo(1);
    assertThat(err.toString()).contains("nowhere.yaml").doesNotContain("\tat ");
  }

  @Test
  void quiet_says_nothing_of_a_good_survey() {
    assertThat(run("check", "--quiet", "example-surveys/1930s-terrace/survey.yaml")).isZero();
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void wrong_use_ends_with_2() {
    assertThat(run()).isEqualTo(2);
    assertThat(run("chek", "x.yaml")).isEqualTo(2);
    assertThat(err.toString()).contains("Usage").doesNotContain("\u001b");
  }

  @Test
  void help_and_version_end_with_0() {
    assertThat(run("--help")).isZero();
    assertThat(run("check", "--help")).isZero();
    assertThat(run("--version")).isZero();
    assertThat(out.toString()).contains("Example").contains("Exit status").contains("drysill ");
  }

  @Test
  void colour_needs_a_terminal_and_no_objection() {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    assertThat(Console.of(nowhere, nowhere, Map.of(), true).colour()).isTrue();
    assertThat(Console.of(nowhere, nowhere, Map.of(), false).colour()).isFalse();
    assertThat(Console.of(nowhere, nowhere, Map.of("NO_COLOR", "1"), true).colour()).isFalse();
    assertThat(Console.of(nowhere, nowhere, Map.of("TERM", "dumb"), true).colour()).isFalse();
  }
}
