package org.drysill.assess.surfaces.factor;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ReadingWordsTest {
  @Test
  void numbers_show_the_decimals_that_they_have() {
    assertThat(ReadingWords.plain(10)).isEqualTo("10");
    assertThat(ReadingWords.plain(7.5)).isEqualTo("7.5");
    assertThat(ReadingWords.tenth(10)).isEqualTo("10.0");
  }
}
