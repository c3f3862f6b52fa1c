package org.drysill.options;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.options.site.Placing;
import org.drysill.options.site.Placings;
import org.drysill.reference.measures.Measure;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No measure of the data is dead: each has a place in one of the constructed homes. */
class EveryMeasureTest {
  private static final String WRECK = OptionsFixtures.text("wreck");
  private static final List<Assessment> HOMES =
      Stream.of(
              WRECK,
              WRECK.replace("walls: solid brick", "walls: cavity brick"),
              OptionsFixtures.text("hidden-leak"))
          .map(OptionsFixtures::assess)
          .toList();

  static Stream<Measure> measures() {
    return OptionsFixtures.basis().catalogue().measures().stream();
  }

  @ParameterizedTest
  @MethodSource("measures")
  void it_has_a_place_in_a_home_with_its_defect(Measure measure) {
    List<Placing> placings =
        HOMES.stream()
            .map(h -> new Placings(h, OptionsFixtures.basis()).of(measure))
            .filter(p -> !p.candidates().isEmpty())
            .toList();
    assertThat(placings).as(measure.id()).isNotEmpty();
    assertThat(placings.get(0).candidates())
        .allSatisfy(c -> assertThat(c.because()).as(measure.id()).isNotEmpty());
  }
}
