package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.drysill.Drysill;
import org.drysill.ReportWishes;
import org.drysill.report.json.ResultsShape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The results of the examples are as {@code schema --results} tells. */
class ResultsFitSchemaTest {
  static Stream<Arguments> examples_in_each_edition() {
    return Stream.of("1930s-terrace", "owners-bungalow", "top-floor-flat")
        .flatMap(e -> ReportWishes.editions().stream().map(edition -> Arguments.of(e, edition)));
  }

  @ParameterizedTest
  @MethodSource("examples_in_each_edition")
  void in_each_edition(String example, String edition) {
    ReportWishes wishes = ReportWishes.NONE.withEdition(edition);
    assertThat(ResultsShape.faults(Rendered.example(example, wishes).report().json())).isEmpty();
  }

  @Test
  void in_a_copy_to_share() {
    Rendered copy = Rendered.example("top-floor-flat", ReportWishes.NONE.shared(true));
    assertThat(ResultsShape.faults(copy.report().json())).isEmpty();
  }

  /** The flat as if the terrace had been its earlier visit, which no survey names. */
  @Test
  void where_two_visits_are_compared() {
    Drysill.Compared compared =
        Drysill.compare(
            Path.of("example-surveys/1930s-terrace/survey.yaml"),
            Path.of("example-surveys/top-floor-flat/survey.yaml"));
    byte[] results = compared.visits().orElseThrow().report().json();
    assertThat(ResultsShape.faults(results)).isEmpty();
  }
}
