package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drysill.Drysill;
import org.drysill.ReportWishes;
import org.drysill.report.json.JsonTree;
import org.drysill.report.json.ResultsShape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

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

  /** Whoever follows a working to one of its inputs finds that one's working in the same file. */
  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void every_working_that_is_named_is_listed(String example) throws IOException {
    byte[] json = Rendered.example(example, ReportWishes.NONE.withEdition("brief")).report().json();
    Map<?, ?> results = (Map<?, ?>) JsonTree.read(json);
    Set<String> listed = new HashSet<>();
    for (Object one : (List<?>) results.get("working")) {
      listed.add(String.valueOf(((Map<?, ?>) one).get("id")));
    }
    Set<String> named = new TreeSet<>();
    named(results, named);
    assertThat(listed).hasSizeGreaterThan(500);
    assertThat(named).hasSizeGreaterThan(500).isSubsetOf(listed);
  }

  private static void named(Object value, Set<String> named) {
    if (value instanceof List<?> many) {
      many.forEach(one -> named(one, named));
    } else if (value instanceof Map<?, ?> map) {
      if (map.get("working") instanceof String id) {
        named.add(id);
      }
      map.values().forEach(one -> named(one, named));
    }
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
