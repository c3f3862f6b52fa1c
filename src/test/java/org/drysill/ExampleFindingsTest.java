package org.drysill;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Direction;
import org.drysill.assess.Finding;
import org.drysill.assess.OutdoorClimates;
import org.drysill.assess.Verdict;
import org.drysill.assess.home.HomeBuilder;
import org.drysill.reference.ReferenceData;
import org.drysill.survey.Survey;
import org.drysill.survey.SurveyReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every finding of the example surveys says what it compares, and in which direction. */
class ExampleFindingsTest {
  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void agreeWithTheirDirection(String example) {
    List<Finding> compared =
        findings(assess(Path.of("example-surveys", example, "survey.yaml")))
            .filter(f -> f.provided().isPresent() && f.required().isPresent())
            .toList();
    assertThat(compared).extracting(Finding::direction).doesNotContain(Direction.NONE);
    assertThat(compared)
        .extracting(Finding::direction)
        .contains(Direction.AT_LEAST, Direction.BELOW);
    assertThat(compared.stream().filter(f -> f.verdict() != Verdict.UNKNOWN))
        .filteredOn(f -> reached(f) != (f.verdict() == Verdict.MEETS))
        .extracting(Finding::id)
        .isEmpty();
  }

  private static boolean reached(Finding finding) {
    double provided = finding.provided().orElseThrow().likely();
    double required = finding.required().orElseThrow().likely();
    return switch (finding.direction()) {
      case AT_LEAST -> provided >= required;
      case AT_MOST -> provided <= required;
      case BELOW -> provided < required;
      case AGREES, NONE -> finding.verdict() == Verdict.MEETS;
    };
  }

  private static Stream<Finding> findings(Assessment all) {
    return Stream.of(
            all.ventilation().findings(),
            all.humidity().findings(),
            List.of(all.moisture().finding()),
            all.condensation().findings(),
            all.elements().findings(),
            all.recovery().findings())
        .flatMap(List::stream);
  }

  private static Assessment assess(Path file) {
    ReferenceData data = ReferenceData.bundled();
    Survey survey = SurveyReader.read(file, data.vocabularies()).file().orElseThrow().survey();
    OutdoorClimates.Resolved climate =
        OutdoorClimates.resolve(survey, data.climates(), Optional.empty(), Optional.empty());
    return new Assessor(data)
        .assess(
            HomeBuilder.build(
                survey,
                climate.climate(),
                climate.assumptions(),
                data.dwelling(),
                data.money(),
                data.tariffs()),
            Optional.empty());
  }
}
