package org.drysill.report.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.drysill.reference.moisture.MoistureSources;
import org.drysill.reference.moisture.Per;
import org.drysill.reference.readings.ReadingAdvice;
import org.drysill.report.language.Language;
import org.drysill.report.language.Phrases;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the data can name has words in each language, whether or not a home of the tests has it. */
class EveryKindHasWordsTest {
  private static final String FOLDER = "org.drysill.report.brief.";

  private static void hasWords(Language language, Stream<String> keys) {
    Phrases phrases = Phrases.of(language, FOLDER + "words", FOLDER + "terms");
    assertThat(keys.filter(key -> phrases.find(key).isEmpty())).isEmpty();
  }

  private static String key(String group, String word) {
    return group + "." + word.replace(' ', '-');
  }

  @ParameterizedTest
  @EnumSource
  void sources_of_water_do(Language language) {
    hasWords(language, MoistureSources.bundled().kinds().stream().map(kind -> key("source", kind)));
  }

  @ParameterizedTest
  @EnumSource
  void amounts_that_are_taken_for_granted_do(Language language) {
    hasWords(language, Stream.of(Per.values()).map(per -> key("value", "# " + per.counted())));
  }

  @ParameterizedTest
  @EnumSource
  void readings_to_take_next_do(Language language) {
    hasWords(
        language,
        ReadingAdvice.read().advice().stream()
            .flatMap(a -> Stream.of("ask", "with", "when").map(group -> key(group, a.kind()))));
  }
}
