package org.drysill.reference.recovery;

import static org.assertj.core.api.Assertions.assertThat;

import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

class RecoveryDefaultsTest {
  private final RecoveryDefaults defaults = RecoveryDefaults.bundled();

  /** ISO 10456:2007, Table 3: steel 50, aluminium alloys 160 W/(m·K) (memory). */
  @Test
  void metal_sleeves_conduct_between_steel_and_aluminium() {
    assertThat(defaults.sleeve(PipeMaterial.METAL).conductivity().range())
        .isEqualTo(new Range(50, 160, 200));
    assertThat(defaults.sleeve(PipeMaterial.PLASTIC).thickness().likely()).isEqualTo(0.003);
  }

  @Test
  void tests_below_five_kelvin_tell_nothing() {
    assertThat(defaults.refusedBelow().likely()).isEqualTo(5);
    assertThat(defaults.indicativeBelow().likely()).isEqualTo(10);
  }
}
