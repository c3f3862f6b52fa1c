package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page that everybody reads. */
class FirstPageTest {
  private static String words(String name) {
    return String.join(" ", Rendered.example(name).first());
  }

  /** Mould was seen in the corner; the sleeve of the fan is colder, but hardly any would grow. */
  @Test
  void it_names_the_worst_place_and_not_the_coldest() {
    assertThat(words("1930s-terrace"))
        .startsWith("The north-east corner in the kitchen is at risk")
        .contains("Kitchen: North-east")
        .contains("Kitchen: North window");
  }

  @Test
  void it_ends_with_what_would_change_it() {
    assertThat(words("1930s-terrace")).contains("weigh the washing wet and dry");
    assertThat(Rendered.example("1930s-terrace").pages().get(1)).startsWith("4SampleTerrace");
  }

  /** Where the factor is above what is asked and yet not told, the bounds of both say why. */
  @ParameterizedTest
  @ValueSource(strings = {"owners-bungalow", "top-floor-flat"})
  void what_is_asked_has_its_bounds_where_they_decide(String name) {
    assertThat(Rendered.example(name).first())
        .anyMatch(line -> line.matches(".*0\\.\\d+ \\(0\\.\\d+–[01]\\.\\d+\\) 0\\.\\d+.* not told"))
        .anyMatch(line -> line.matches("[^0-9]*\\(0\\.\\d+–[01]\\.\\d+\\)"));
  }

  /** Nothing of how the program keeps things gets into a sentence. */
  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void words_are_words(String name) {
    assertThat(Rendered.example(name).words())
        .doesNotContainPattern("\\b[A-Z][A-Za-z]*\\[[a-z]\\w*=|Optional[.\\[]|@[0-9a-f]{5,}");
  }
}
