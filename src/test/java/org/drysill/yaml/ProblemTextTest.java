package org.drysill.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.drysill.yaml.Problem.Severity;
import org.junit.jupiter.api.Test;

class ProblemTextTest {
  private static Problem problem(String line, int column) {
    return new Problem(
        Severity.ERROR,
        "S012",
        new Place("home.yaml", 14, column),
        "rooms[2].fans[0].flow",
        "\"fast\"",
        "a number",
        Optional.of("11 l/s"),
        line);
  }

  @Test
  void tells_place_code_key_found_expected_line_caret_and_suggestion() {
    assertThat(ProblemText.of(problem("      flow: fast", 13)))
        .isEqualTo(
            """
            home.yaml:14:13: error S012: rooms[2].fans[0].flow: found "fast", expected a number
                      flow: fast
                            ^
                did you mean "11 l/s"?\
            """);
  }

  @Test
  void the_caret_stands_under_its_column_after_tabs_wide_characters_and_marks() {
    assertThat(excerpt("\tflow:\tfast", 8)).containsExactly(" flow: fast", "       ^");
    assertThat(excerpt("部屋: fast", 5)).containsExactly("部屋: fast", "      ^");
    assertThat(excerpt("😀: fast", 4)).containsExactly("😀: fast", "    ^");
    assertThat(excerpt("e\u0301: fast", 5)).containsExactly("e\u0301: fast", "   ^");
  }

  @Test
  void a_very_long_line_is_cut_around_the_caret() {
    String line = "x".repeat(5000) + "!" + "y".repeat(5000);
    String[] shown = excerpt(line, 5001);
    assertThat(shown[0]).hasSize(102).startsWith("…x").endsWith("y…");
    assertThat(shown[0].charAt(shown[1].indexOf('^'))).isEqualTo('!');
  }

  @Test
  void a_column_past_the_end_puts_the_caret_behind_the_line() {
    assertThat(excerpt("flow:", 9)).containsExactly("flow:", "     ^");
  }

  private static String[] excerpt(String line, int column) {
    return ProblemText.of(problem(line, column))
        .lines()
        .skip(1)
        .limit(2)
        .map(l -> l.substring(4))
        .toArray(String[]::new);
  }
}
