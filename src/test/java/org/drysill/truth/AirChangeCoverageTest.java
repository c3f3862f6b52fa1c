package org.drysill.truth;

import static org.assertj.core.api.Assertions.assertThat;

import org.drysill.benchmark.AirChangeExperiment;
import org.drysill.benchmark.AirChangeExperiment.Outcome;
import org.junit.jupiter.api.Test;

/** The experiment on made-up rooms, with its seeds fixed. */
class AirChangeCoverageTest {
  /** An interval that always holds the truth because it is wide is worth nothing: both count. */
  @Test
  void co2_holds_the_true_air_change_in_nine_of_ten_rooms_within_a_narrow_interval() {
    Outcome outcome = AirChangeExperiment.co2(200, 14);
    assertThat(outcome.covered()).isGreaterThanOrEqualTo(0.90);
    assertThat(outcome.medianHalfWidth()).isLessThan(0.13);
    assertThat(Math.abs(outcome.medianBias())).isLessThan(0.03);
    assertThat(outcome.answered()).isGreaterThanOrEqualTo(110);
  }

  @Test
  void bounds_from_vapour_hold_in_nine_of_ten_rooms() {
    Outcome outcome = AirChangeExperiment.vapour(200, 14);
    assertThat(outcome.bounded()).isGreaterThanOrEqualTo(0.90);
    assertThat(outcome.covered()).isGreaterThanOrEqualTo(0.90);
    assertThat(outcome.answered()).isGreaterThanOrEqualTo(30);
  }
}
