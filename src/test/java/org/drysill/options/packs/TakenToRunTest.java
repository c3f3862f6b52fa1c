package org.drysill.options.packs;

import static org.assertj.core.api.Assertions.assertThat;

import org.drysill.OptionsFixtures;
import org.drysill.physics.Range;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A quote is asked for what the measure has: a dryer recovers no heat of air. */
class TakenToRunTest {
  @ParameterizedTest
  @CsvSource({
    "heat-pump-dryer, 5, 5, 0, 0, electricity for each load",
    "dehumidifier, 5, 5, 0, 0, electricity for each litre of water",
    "continuous-extract, 10, 10, 0, 0, power",
    "single-room-recovery, 20, 20, 0.4, 0.7, power and heat recovery",
    "single-room-recovery-pair, 10, 30, 0.4, 0.7, power and upkeep and heat recovery",
    "window-ventilator, 0, 9, 0, 0, upkeep"
  })
  void names_what_is_not_known(
      String measure,
      double leastUpkeep,
      double upkeep,
      double leastKept,
      double kept,
      String words) {
    assertThat(
            TakenToRun.of(
                OptionsFixtures.measure(measure),
                new Range(leastUpkeep, leastUpkeep, upkeep),
                new Range(leastKept, leastKept, kept)))
        .isEqualTo(words);
  }
}
