package org.drysill.reference.logs;

import static org.assertj.core.api.Assertions.assertThat;

import org.drysill.physics.Range;
import org.drysill.physics.tracer.Substance;
import org.drysill.reference.How;
import org.junit.jupiter.api.Test;

class LogRulesTest {
  private final LogRules rules = LogRules.bundled();

  /** Tried against the shortest times that ASTM E741-11 lists (memory): rate times time is 1. */
  @Test
  void a_decay_of_co2_is_followed_for_an_air_change_at_least() {
    assertThat(rules.decays().ofCo2().leastAirChanges()).isEqualTo(1);
    assertThat(rules.decays().co2().leastAirChanges().source().how()).isEqualTo(How.MEMORY);
  }

  @Test
  void vapour_waits_longer_than_co2_and_is_believed_less() {
    assertThat(rules.decays().ofVapour().settleHours())
        .isGreaterThan(rules.decays().ofCo2().settleHours());
    assertThat(rules.vapour()).isEqualTo(new Substance.Buffered(new Range(5, 10, 15)));
  }

  @Test
  void intervals_are_of_95_percent() {
    assertThat(rules.confidence().confidence().level()).isEqualTo(0.95);
  }
}
