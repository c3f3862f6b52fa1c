package org.drysill.physics.tracer.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

class RandomEffectsTest {
  private static final ExpectedSpread NONE = new ExpectedSpread(0, 1e-9);

  /**
   * Four estimates of equal error 0.1 and spread 0.2: Q = Σ(x − m)²/0.01 = 20, τ² = (20 − 3)/(400 −
   * 100) (arithmetic).
   */
  @Test
  void the_variance_between_is_that_of_dersimonian_and_laird() {
    double d = Math.sqrt(0.05);
    RandomEffects all = combined(NONE, 1 - d, 1 + d, 1 - d, 1 + d);
    assertThat(all.mean()).isCloseTo(1, within(1e-12));
    assertThat(all.between()).isCloseTo(Math.sqrt(17.0 / 300), within(1e-6));
    assertThat(all.ownError()).isCloseTo(Math.sqrt((0.01 + 17.0 / 300) / 4), within(1e-6));
    assertThat(all.count()).isEqualTo(4);
  }

  @Test
  void estimates_that_agree_gain_by_their_number() {
    RandomEffects all = combined(NONE, 1, 1, 1, 1);
    assertThat(all.between()).isZero();
    assertThat(all.ownError()).isCloseTo(0.05, within(1e-12));
    assertThat(all.degreesOfFreedom()).isCloseTo(80, within(1e-9));
  }

  @Test
  void what_all_share_does_not_shrink() {
    List<Estimate> shared =
        DoubleStream.of(1, 1, 1, 1).mapToObj(x -> new Estimate(x, 0.001, 0.1, 20)).toList();
    RandomEffects all = RandomEffects.of(shared, NONE);
    assertThat(all.sharedError()).isCloseTo(0.1, within(1e-12));
    Range interval = all.interval(0.95);
    assertThat(interval.high() - 1).isCloseTo(0.196, within(0.001));
  }

  @Test
  void one_estimate_alone_has_the_spread_that_is_expected() {
    RandomEffects one = combined(new ExpectedSpread(0.3, 3), 1);
    assertThat(one.between()).isCloseTo(0.3, within(1e-12));
    assertThat(one.ownError()).isCloseTo(Math.hypot(0.3, 0.1), within(1e-12));
    assertThat(one.degreesOfFreedom()).isBetween(3.0, 4.0);
  }

  @Test
  void perfect_estimates_do_not_divide_by_zero() {
    RandomEffects all = RandomEffects.of(List.of(new Estimate(1, 0, 0, 5)), NONE);
    assertThat(all.interval(0.95).high()).isCloseTo(1, within(1e-4));
  }

  @Test
  void nothing_cannot_be_combined() {
    assertThatThrownBy(() -> RandomEffects.of(List.of(), NONE))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static RandomEffects combined(ExpectedSpread expected, double... values) {
    return RandomEffects.of(
        DoubleStream.of(values).mapToObj(x -> new Estimate(x, 0.1, 0, 20)).toList(), expected);
  }
}
