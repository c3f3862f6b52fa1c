package org.drysill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drysill.Drysill;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder;

  /** What the command said of an example. */
  private record Said(int status, String out, String err) {}

  private static final Map<String, Said> OF_EXAMPLES = new HashMap<>();

  /** Asked once for all tests. */
  private Said ofExample(String example) {
    return OF_EXAMPLES.computeIfAbsent(
        example,
        e -> {
          int status = run("check", "example-surveys/" + e);
          return new Said(status, out.toString(), err.toString());
        });
  }

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
    Said said = ofExample(example);
    assertThat(said.status()).as(said.err()).isZero();
    assertThat(said.out()).contains(": can be used;");
    assertThat(said.err()).doesNotContain(": error ");
  }

  @Test
  void what_the_survey_leaves_open_is_said() {
    assertThat(ofExample("owners-bungalow/survey.yaml").out())
        .contains("Air leakage: 11..16 /h at 50 Pa")
        .contains("horizon: 20 years");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1930s-terrace/survey.yaml",
        "owners-bungalow/survey.yaml",
        "top-floor-flat/survey.yaml"
      })
  void whatever_cannot_be_told_is_listed_with_the_reading_that_would_settle_it(String example) {
    Said said = ofExample(example);
    List<Finding> open = Drysill.check(Path.of("example-surveys", example)).open();
    assertThat(open).isNotEmpty().allMatch(f -> f.verdict() == Verdict.UNKNOWN);
    assertThat(said.out()).contains(open.size() + " comparisons that cannot be told yet");
    for (Finding finding : open) {
      String told = finding.settledBy().orElse(finding.because());
      assertThat(said.out().lines())
          .as(finding.id())
          .anyMatch(line -> line.contains(finding.subject()) && line.endsWith(": " + told));
    }
  }

  /** The same as the report has, at the end, so that the rest need not wait for it. */
  @Test
  void what_to_measure_next_is_told_last_with_its_shares_of_doubt() {
    List<String> lines = ofExample("1930s-terrace/survey.yaml").out().lines().toList();
    List<String> next = lines.stream().filter(l -> l.contains("To measure next")).toList();
    assertThat(next)
        .hasSizeBetween(1, 5)
        .isEqualTo(lines.subList(lines.size() - next.size(), lines.size()));
    assertThat(next.get(0))
        .startsWith("  To measure next, 1: Have the air leakage of the home measured")
        .containsPattern("would take away \\d+ % of the doubt whether there is enough air");
  }

  @Test
  void a_reading_that_settles_several_comparisons_is_told_once() throws IOException {
    Path survey = folder.resolve("survey.yaml");
    Files.writeString(
        survey,
        """
        drysill: 1
        visit: {date: 2026-01-22}
        dwelling: {jurisdiction: england, floor_area: 84 m2}
        rooms:
          - {id: living, use: living, windows: [{id: w}]}
          - {id: bed, use: bedroom, windows: [{id: v}]}
        """);
    assertThat(run("check", survey.toString())).isZero();
    assertThat(out.toString().lines())
        .filteredOn(line -> line.contains("Leave a logger"))
        .singleElement()
        .asString()
        .startsWith("  To settle ")
        .contains("; ");
  }

  @Test
  void what_no_reading_can_settle_is_told_with_its_reason() throws IOException {
    Path survey = folder.resolve("survey.yaml");
    Files.writeString(
        survey,
        """
        drysill: 1
        visit: {date: 2026-01-22}
        dwelling: {jurisdiction: norway, floor_area: 84 m2}
        rooms: [{id: kitchen, use: kitchen, windows: [{id: w}]}]
        """);
    assertThat(run("check", survey.toString())).isZero();
    assertThat(out.toString().lines())
        .anyMatch(line -> line.startsWith("  Not told: Background ventilators: "))
        .anyMatch(line -> line.startsWith("  To settle "));
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
    assertThat(Drysill.check(survey).open()).isEmpty();
    assertThat(Drysill.check(survey).assumptions()).isEmpty();
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
