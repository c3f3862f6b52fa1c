package org.drysill.assess;

import static org.assertj.core.api.Assertions.assertThat;

import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Three values, and what equality means to each direction. */
class VerdictTest {
  @ParameterizedTest
  @CsvSource({"10, 12, 10, MEETS", "9, 12, 10, UNKNOWN", "8, 10, 10, UNKNOWN", "8, 9.9, 10, SHORT"})
  void at_least_is_reached_by_equality(double low, double high, double asked, Verdict verdict) {
    assertThat(Verdict.atLeast(new Range(low, low, high), asked)).isEqualTo(verdict);
  }

  @ParameterizedTest
  @CsvSource({
    "10, 12, 9, 10, MEETS",
    "10, 12, 9, 10.1, UNKNOWN",
    "8, 9, 9, 10, UNKNOWN",
    "8, 8.9, 9, 10, SHORT"
  })
  void a_limit_not_known_exactly_is_reached_at_its_highest_and_missed_at_its_lowest(
      double low, double high, double least, double most, Verdict verdict) {
    assertThat(Verdict.atLeast(new Range(low, low, high), new Range(least, least, most)))
        .isEqualTo(verdict);
  }

  @ParameterizedTest
  @CsvSource({"8, 9.9, 10, MEETS", "8, 10, 10, UNKNOWN", "9, 12, 10, UNKNOWN", "10, 12, 10, SHORT"})
  void below_fails_by_equality(double low, double high, double limit, Verdict verdict) {
    assertThat(Verdict.below(new Range(low, low, high), limit)).isEqualTo(verdict);
  }

  @ParameterizedTest
  @CsvSource({
    "8, 10, 10, MEETS",
    "9, 12, 10, UNKNOWN",
    "10, 12, 10, UNKNOWN",
    "10.1, 12, 10, SHORT"
  })
  void at_most_is_kept_by_equality(double low, double high, double limit, Verdict verdict) {
    assertThat(Verdict.atMost(new Range(low, low, high), limit)).isEqualTo(verdict);
  }

  /** 0.1 + 0.2 is a hair above 0.3 as doubles, and 6 × 0.05 too. */
  @Test
  void what_is_equal_but_for_the_rounding_of_sums_and_products_is_equal() {
    assertThat(Verdict.atLeast(Range.exactly(0.3), 6 * 0.05)).isEqualTo(Verdict.MEETS);
    assertThat(Verdict.below(Range.exactly(0.3), 0.1 + 0.2)).isEqualTo(Verdict.SHORT);
    assertThat(Verdict.atMost(Range.exactly(0.1 + 0.2), 0.3)).isEqualTo(Verdict.MEETS);
    assertThat(Verdict.atLeast(Range.exactly(0), 0)).isEqualTo(Verdict.MEETS);
    assertThat(Verdict.atLeast(Range.exactly(0.2999999), 0.3)).isEqualTo(Verdict.SHORT);
  }

  @Test
  void limits_from_above_are_those_that_a_higher_value_breaks() {
    assertThat(Direction.values())
        .filteredOn(Direction::limitsFromAbove)
        .containsExactly(Direction.AT_MOST, Direction.BELOW);
  }
}
