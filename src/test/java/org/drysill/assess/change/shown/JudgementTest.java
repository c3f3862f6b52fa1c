package org.drysill.assess.change.shown;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JudgementTest {
  @ParameterizedTest
  @CsvSource({
    "-3, 2, fell",
    "3, 2, rose",
    "2, 2, not shown",
    "-2, 2, not shown",
    "0, 0, not shown",
    "0.1, 0, rose"
  })
  void a_change_is_shown_where_it_is_greater_than_the_error(
      double change, double error, String words) {
    Judgement judgement = Judgement.byError(change, error, "plus or minus 2 Pa");
    assertThat(judgement.words()).isEqualTo(words);
    assertThat(judgement.isShown()).isEqualTo(judgement.doubt().isEmpty());
    assertThat(judgement.criterion()).endsWith("together, plus or minus 2 Pa");
  }

  @Test
  void why_a_change_is_not_shown_is_told_in_few_words() {
    for (Doubt doubt : Doubt.values()) {
      assertThat(Judgement.notShown(doubt, "criterion").shown()).isEqualTo(Shown.NOT_SHOWN);
      assertThat(doubt.words()).hasSizeBetween(5, 22);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "-0.25, a quarter less",
    "0.25, a quarter more",
    "-0.37, 37 % less",
    "0.4, 40 % more"
  })
  void a_share_in_words(double share, String words) {
    assertThat(ChangeWords.share(share)).isEqualTo(words);
  }

  @Test
  void a_factor_has_two_decimals() {
    assertThat(ChangeWords.twoDecimals(0.6)).isEqualTo("0.60");
  }
}
