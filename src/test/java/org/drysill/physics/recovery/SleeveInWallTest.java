package org.drysill.physics.recovery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.drysill.physics.Range;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The estimate of a sleeve against the full treatment of tube and wall. */
class SleeveInWallTest {
  private static final double LIP_M = 0.03;

  private static double alongThePipe(Sleeve sleeve) {
    double area = sleeve.lipAreaM2(LIP_M);
    return Sleeve.innerEndFactor(sleeve.axialConductance(), 7.7 * area, 25 * area);
  }

  /** Steel and aluminium in insulation, in light block, in brick. */
  @ParameterizedTest
  @CsvSource({"160, 0.04", "160, 0.2", "160, 0.77", "50, 0.04", "50, 0.2", "50, 0.77"})
  void a_metal_rim_lies_within_the_bounds_of_the_estimate(double metal, double wall) {
    SleeveInWall full = new SleeveInWall(metal, 0.16, 0.001, 0.3, LIP_M, wall);
    assertThat(full.toOutside()).isCloseTo(full.fromRoom(), within(1e-6));
    Range rise = RecoveryDefaults.bundled().rimInWall().range();
    double estimate = alongThePipe(new Sleeve(metal, 0.16, 0.001, 0.3));
    assertThat(full.innerLip()).isBetween(estimate + rise.low(), estimate + rise.high());
  }

  /** Plastic: the rim is as warm as the wall; the estimate is at most 0.04 too warm. */
  @ParameterizedTest
  @CsvSource({"0.04", "0.2", "0.77"})
  void a_plastic_rim_is_nearly_as_warm_as_the_room(double wall) {
    SleeveInWall full = new SleeveInWall(0.17, 0.16, 0.003, 0.3, LIP_M, wall);
    double estimate = alongThePipe(new Sleeve(0.17, 0.16, 0.003, 0.3));
    assertThat(full.innerLip()).isBetween(estimate - 0.04, estimate + 0.01);
  }

  /** Without a tube to speak of, the wall alone: U = 1 / (0.13 + 0.3/0.2 + 0.04). */
  @ParameterizedTest
  @CsvSource({"0.2"})
  void the_full_treatment_gives_the_u_value_of_a_plain_wall(double wall) {
    SleeveInWall full = new SleeveInWall(1e-6, 0.16, 1e-5, 0.3, LIP_M, wall);
    double area = Math.PI * (0.68 * 0.68 - 0.08 * 0.08);
    double plain = area / (1 / 7.7 + 0.3 / wall + 1 / 25.0);
    assertThat(full.fromRoom()).isCloseTo(plain, within(0.002 * plain));
  }
}
