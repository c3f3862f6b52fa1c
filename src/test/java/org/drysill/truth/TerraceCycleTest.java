package org.drysill.truth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The log of the terrace's unit is what its generator makes, and agrees with the readings. */
class TerraceCycleTest {
  @Test
  void the_file_is_that_of_its_seed() throws IOException {
    Path file = Path.of("example-surveys/1930s-terrace/logs/cycle.csv");
    assertThat(Files.readString(file)).isEqualTo(TerraceCycle.csv());
    assertThat(Files.size(file)).isLessThan(100_000);
  }

  /** Means noted at half past ten: (12.2 − 3.2)/(20.0 − 3.2) and (20.1 − 10.6)/(20.1 − 3.2). */
  @Test
  void its_truth_agrees_with_the_means_that_were_noted() {
    CycleMaker.Made made = CycleMaker.make(TerraceCycle.TRUTH);
    assertThat(made.supplyRatio()).isCloseTo((12.2 - 3.2) / (20.0 - 3.2), within(0.03));
    assertThat(made.exhaustRatio()).isCloseTo((20.1 - 10.6) / (20.1 - 3.2), within(0.03));
  }
}
