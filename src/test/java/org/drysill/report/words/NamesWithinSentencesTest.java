package org.drysill.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NamesWithinSentencesTest {
  @ParameterizedTest
  @CsvSource({
    "Back bedroom, back bedroom",
    "WC, WC",
    "A, A",
    "kitchen, kitchen",
    "A room to use, a room to use",
    "'', ''"
  })
  void a_name_loses_its_first_capital_within_a_sentence(String name, String within) {
    assertThat(Words.within(name)).isEqualTo(within);
  }
}
