package org.drysill.physics.zones.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

/** The fit against normal distributions that can be worked out by hand. */
class FitTest {
  private static final LogNormal WATER = new LogNormal(1e-4, 0.4);
  private static final LogNormal AIR = new LogNormal(0.02, 0.5);

  /** z believed 0 ± 1, read as 3 ± 1: in the middle, with half of the variance. */
  @Test
  void belief_and_reading_share_by_their_errors() {
    Posterior after = new LeastSquares(z -> z.clone(), new double[] {3}, new double[] {1}).solve(0);
    assertThat(after.mean(0)).isCloseTo(1.5, within(1e-9));
    assertThat(after.covariance(0, 0)).isCloseTo(0.5, within(1e-9));
    assertThat(after.deviation(z -> 2 * z[0])).isCloseTo(2 * Math.sqrt(0.5), within(1e-9));
  }

  /** An excess is water by air: their logarithms move together after it is read. */
  @Test
  void an_excess_alone_fixes_water_over_air_and_neither() {
    Posterior after = excess(WATER, AIR);
    assertThat(Posterior.before(2).correlation(FitTest::water, FitTest::air)).isZero();
    assertThat(after.correlation(FitTest::water, FitTest::air)).isGreaterThan(0.95);
    double ratio = after.deviation(z -> Math.log(water(z) / air(z)));
    assertThat(ratio).isLessThan(0.06);
    assertThat(after.positive(FitTest::water).spread()).isGreaterThan(0.25);
  }

  /** A flow known to 5 % frees the two of each other. */
  @Test
  void a_measured_flow_settles_the_split() {
    LogNormal measured = new LogNormal(0.02, 0.05);
    Forward model = z -> new double[] {WATER.at(z[0]) / measured.at(z[1])};
    Posterior after =
        new LeastSquares(model, new double[] {0.006}, new double[] {0.0006}).solve(0, 0);
    assertThat(after.correlation(FitTest::water, z -> measured.at(z[1]))).isLessThan(0.5);
    assertThat(after.positive(FitTest::water).median()).isCloseTo(1.2e-4, within(2e-6));
    assertThat(after.positive(FitTest::water).spread()).isLessThan(0.12);
  }

  /** A reading is held against what the others make expect, by the errors of both. */
  @Test
  void a_miss_is_judged_by_the_other_readings() {
    double[] readings = {1.2, 0.8, -0.5};
    double[] errors = {0.3, 0.4, 0.5};
    Forward model = z -> new double[] {z[0], z[0] + 0.5 * z[1], z[0] - z[1]};
    RobustFit all = RobustFit.of(model, readings, errors, 2, 3);
    double[] without = {0.3, 0.4, Double.POSITIVE_INFINITY};
    Posterior others = new LeastSquares(model, readings, without).solve(0, 0);
    double predicted = others.value(z -> model.at(z)[2]);
    double error = Math.hypot(0.5, others.deviation(z -> model.at(z)[2]));
    assertThat(all.miss(2)).isCloseTo((-0.5 - predicted) / error, within(1e-6));
  }

  @Test
  void a_reading_that_cannot_be_explained_is_left_out() {
    Forward model = z -> new double[] {z[0], z[0], z[0], z[0]};
    double[] errors = {0.1, 0.1, 0.1, 0.1};
    RobustFit fit = RobustFit.of(model, new double[] {0.5, 0.45, 3, 0.55}, errors, 1, 3);
    assertThat(fit.leftOut(2)).isTrue();
    assertThat(fit.leftOut(0)).isFalse();
    assertThat(fit.miss(2)).isGreaterThan(20);
    assertThat(Math.abs(fit.miss(0))).isLessThan(1);
    assertThat(fit.posterior().mean(0)).isCloseTo(0.5, within(0.01));
    RobustFit first = RobustFit.of(model, new double[] {3, 0.45, 0.5, 0.55}, errors, 1, 3);
    assertThat(first.leftOut(0)).isTrue();
    assertThat(first.leftOut(1)).isFalse();
  }

  /** Two of four may go; of three that contradict each other one. */
  @Test
  void no_more_than_half_are_left_out() {
    Forward model = z -> new double[] {z[0], z[0], z[0]};
    double[] errors = {0.1, 0.1, 0.1};
    RobustFit fit = RobustFit.of(model, new double[] {-4, 0, 4}, errors, 1, 3);
    int out = 0;
    for (int i = 0; i < 3; i++) {
      out += fit.leftOut(i) ? 1 : 0;
    }
    assertThat(out).isEqualTo(1);
  }

  /** The only reading of a home has nothing to be judged by but belief. */
  @Test
  void a_single_reading_is_kept() {
    RobustFit fit = RobustFit.of(z -> z.clone(), new double[] {9}, new double[] {0.1}, 1, 3);
    assertThat(fit.leftOut(0)).isFalse();
    assertThat(fit.miss(0)).isGreaterThan(3);
  }

  /** A start from which the full step would overshoot: z³ is flat at 0. */
  @Test
  void finds_its_way_where_the_model_is_bent() {
    Forward model = z -> new double[] {Math.exp(3 * z[0])};
    Posterior after =
        new LeastSquares(model, new double[] {Math.exp(6)}, new double[] {1}).solve(0);
    assertThat(after.mean(0)).isCloseTo(2, within(0.001));
  }

  @Test
  void a_range_holds_95_of_100() {
    LogNormal even = LogNormal.of(new Range(0.5, 1, 2));
    assertThat(even.range().low()).isCloseTo(0.5, within(1e-12));
    assertThat(even.range().high()).isCloseTo(2, within(1e-12));
    LogNormal open = LogNormal.of(new Range(0, 1, 2));
    assertThat(open.spread()).isCloseTo(even.spread(), within(1e-12));
    assertThat(LogNormal.of(Range.exactly(3)).spread()).isZero();
  }

  @Test
  void what_does_not_move_has_no_correlation() {
    assertThat(Posterior.before(1).correlation(z -> 5, z -> Math.exp(z[0]))).isZero();
  }

  @Test
  void refuses_errors_that_are_none() {
    Forward model = z -> z.clone();
    assertThatThrownBy(() -> new LeastSquares(model, new double[] {1}, new double[] {0}))
        .hasMessageContaining("standard error");
  }

  private static Posterior excess(LogNormal water, LogNormal air) {
    Forward model = z -> new double[] {water.at(z[0]) / air.at(z[1])};
    return new LeastSquares(model, new double[] {0.006}, new double[] {0.0003}).solve(0, 0);
  }

  private static double water(double[] z) {
    return WATER.at(z[0]);
  }

  private static double air(double[] z) {
    return AIR.at(z[1]);
  }
}
