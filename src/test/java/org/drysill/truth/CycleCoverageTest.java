package org.drysill.truth;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.drysill.benchmark.CycleExperiment;
import org.drysill.benchmark.CycleExperiment.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The experiment on made-up alternating units, with its seeds fixed. */
class CycleCoverageTest {
  @TempDir private Path folder;

  /** An interval that always holds the truth because it is wide is worth nothing: both count. */
  @Test
  void the_true_ratio_lies_within_the_interval_in_nine_of_ten_logs() throws IOException {
    Outcome outcome = CycleExperiment.run(200, folder);
    assertThat(outcome.answered()).isEqualTo(200);
    assertThat(outcome.supplyHeld()).isGreaterThanOrEqualTo(0.90);
    assertThat(outcome.exhaustHeld()).isGreaterThanOrEqualTo(0.90);
    assertThat(outcome.medianHalfWidth()).isLessThan(0.035);
    assertThat(Math.abs(outcome.medianBias())).isLessThan(0.005);
  }
}
