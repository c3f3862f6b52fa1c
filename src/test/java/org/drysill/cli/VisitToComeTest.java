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

/** The terminal knows what day it is; the report does not. */
class VisitToComeTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder;

  @BeforeEach
  void surveys() throws IOException {
    visit("before.yaml", "2025-01-22");
    visit("survey.yaml", "2098-01-22");
  }

  private void visit(String name, String day) throws IOException {
    Files.writeString(
        folder.resolve(name),
        """
        drysill: 1
        visit: {date: DAY}
        dwelling: {jurisdiction: england, floor_area: 84 m2}
        rooms: [{id: kitchen, use: kitchen}]
        """
            .replace("DAY", day));
  }

  private int run(String arguments) {
    String[] all = arguments.replace("HERE", folder.toString()).split(" ");
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), Map.of(), false, all);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check HERE/survey.yaml",
        "sheet HERE/survey.yaml",
        "compare HERE/before.yaml HERE/survey.yaml"
      })
  void a_visit_that_is_yet_to_come_is_warned_of(String command) {
    assertThat(run(command)).isZero();
    assertThat(err.toString()).contains("survey.yaml:2:15: warning S043: visit.date");
  }

  @Test
  void the_results_do_not_hold_what_depends_on_the_day() throws IOException {
    assertThat(run("report HERE/survey.yaml --edition brief --json HERE/results.json")).isZero();
    assertThat(err.toString()).contains("survey.yaml:2:15: warning S043: visit.date");
    assertThat(Files.readString(folder.resolve("results.json")))
        .contains("2098-01-22")
        .doesNotContain("S043");
  }

  @Test
  void a_visit_of_the_past_and_a_quiet_command_are_not() {
    assertThat(run("check HERE/before.yaml")).isZero();
    assertThat(run("check --quiet HERE/survey.yaml")).isZero();
    assertThat(err.toString()).doesNotContain("S043");
  }
}
