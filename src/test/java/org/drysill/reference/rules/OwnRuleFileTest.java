package org.drysill.reference.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.drysill.yaml.Place;
import org.drysill.yaml.Problem;
import org.drysill.yaml.ProblemText;
import org.drysill.yaml.Reading;
import org.junit.jupiter.api.Test;

/** A rule set of a user's own that is not right is refused, with the place of every fault. */
class OwnRuleFileTest {
  private static final String RIGHT =
      """
      id: house
      title: House rules
      edition: "2026"
      place: here
      standing: voluntary
      meant_for: Homes of ours.
      paper: A4
      units: metric
      whole_home:
        - purpose: All the time.
          counts: all outdoor air
          rate:
            name: floor area
            per_floor_area: {rate: 0.3 l/s, area: 1 m2}
            source: {document: House rules, clause: page 1, how: seen}
      extract:
        - room: kitchen
          mode: intermittent
          rate: 30 l/s
          source: {document: House rules, clause: page 2, how: seen}
      purge:
        air_change: 4 /h
        source: {document: House rules, clause: page 3, how: seen}
      """;

  private static List<Problem> problems(String text) {
    Reading<RuleSet> reading = RuleSets.read(text, "house.yaml");
    assertThat(reading.value()).isEmpty();
    return reading.problems();
  }

  /** The one problem of the right file with a part of it replaced, at the place of a word. */
  private static Problem only(String part, String wrong, int line, String at) {
    assertThat(RIGHT).contains(part);
    String text = RIGHT.replace(part, wrong);
    List<Problem> problems = problems(text);
    assertThat(problems).as(problems.toString()).hasSize(1);
    Problem problem = problems.get(0);
    int column = text.lines().toList().get(line - 1).indexOf(at) + 1;
    assertThat(column).as("the test's own word").isPositive();
    assertThat(problem.place()).isEqualTo(new Place("house.yaml", line, column));
    assertThat(problem.severity()).isEqualTo(Problem.Severity.ERROR);
    assertThat(ProblemText.of(problem)).contains("house.yaml:" + line + ":" + column).contains("^");
    return problem;
  }

  @Test
  void the_file_itself_is_right() {
    assertThat(RuleSets.read(RIGHT, "house.yaml").problems()).isEmpty();
  }

  @Test
  void an_extract_rate_without_its_source_is_refused() {
    Problem problem =
        only("\n    source: {document: House rules, clause: page 2, how: seen}", "", 17, "room");
    assertThat(problem.key()).isEqualTo("extract[0].source");
    assertThat(problem.code()).isEqualTo("Y014");
  }

  @Test
  void a_source_that_does_not_say_how_it_is_known_is_refused() {
    Problem problem = only("clause: page 3, how: seen", "clause: page 3", 23, "{");
    assertThat(problem.key()).isEqualTo("purge.source.how");
    assertThat(problem.code()).isEqualTo("Y014");
  }

  @Test
  void a_term_that_is_none_is_refused_with_the_one_that_was_meant() {
    List<Problem> problems = problems(RIGHT.replace("per_floor_area", "per_flor_area"));
    assertThat(problems)
        .anySatisfy(
            problem -> {
              assertThat(problem.code()).isEqualTo("Y013");
              assertThat(problem.place()).isEqualTo(new Place("house.yaml", 14, 7));
              assertThat(problem.suggestion()).contains("per_floor_area");
            })
        .anySatisfy(
            problem -> {
              // And without that term there is none.
              assertThat(problem.code()).isEqualTo("Y030");
              assertThat(problem.place()).isEqualTo(new Place("house.yaml", 13, 7));
              assertThat(problem.expected()).contains("exactly one way to compute the term");
            });
  }

  @Test
  void a_word_that_is_none_is_refused_with_the_one_that_was_meant() {
    Problem problem = only("mode: intermittent", "mode: intermitent", 18, "intermitent");
    assertThat(problem.code()).isEqualTo("Y023");
    assertThat(problem.suggestion()).contains("intermittent");
  }

  @Test
  void a_negative_rate_is_refused() {
    Problem problem = only("rate: 30 l/s", "rate: -30 l/s", 19, "-30");
    assertThat(problem.key()).isEqualTo("extract[0].rate");
    assertThat(problem.code()).isEqualTo("Y021");
    assertThat(only("rate: 0.3 l/s", "rate: -0.3 l/s", 14, "-0.3").code()).isEqualTo("Y021");
    assertThat(only("air_change: 4 /h", "air_change: -4 /h", 22, "-4").code()).isEqualTo("Y021");
  }

  @Test
  void a_unit_of_something_else_is_refused() {
    Problem problem = only("rate: 30 l/s", "rate: 30 kg", 19, "30 kg");
    assertThat(problem.code()).isEqualTo("Y018");
    assertThat(only("area: 1 m2", "area: 1 m", 14, "1 m}").code()).isEqualTo("Y018");
    assertThat(only("air_change: 4 /h", "air_change: 4 furlongs", 22, "4 furlongs").code())
        .isEqualTo("Y018");
  }

  @Test
  void a_row_with_two_rates_or_with_none_is_refused() {
    assertThat(only("rate: 30 l/s", "rate: 30 l/s\n    air_change: 4 /h", 17, "room").code())
        .isEqualTo("Y030");
    assertThat(only("    rate: 30 l/s\n", "", 17, "room").code()).isEqualTo("Y030");
  }

  @Test
  void all_faults_are_told_at_once() {
    String text =
        RIGHT
            .replace("rate: 30 l/s", "rate: -30 l/s")
            .replace("units: metric", "units: furlongs")
            .replace("per_floor_area", "per_flor_area");
    assertThat(problems(text)).extracting(p -> p.place().line()).containsExactly(8, 13, 14, 19);
  }
}
