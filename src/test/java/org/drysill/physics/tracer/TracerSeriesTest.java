package org.drysill.physics.tracer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.drysill.physics.tracer.Gaps.Part;
import org.drysill.physics.tracer.TurningPoints.Turn;
import org.junit.jupiter.api.Test;

class TracerSeriesTest {
  @Test
  void missing_readings_leave_a_gap_and_no_zero() {
    TracerSeries series = TracerSeries.of(new double[] {0, 1, 2}, new double[] {5, Double.NaN, 3});
    assertThat(series.size()).isEqualTo(2);
    assertThat(series.hours()).containsExactly(0, 2);
    assertThat(series.excesses()).containsExactly(5, 3);
  }

  @Test
  void what_is_no_series_is_refused() {
    double[] two = {0, 1};
    refuses("expected 2 values", two, new double[] {1}, two, new double[] {1, 1});
    refuses("must rise", new double[] {1, 1}, two, two, new double[] {1, 1});
    refuses("not finite", new double[] {0, Double.NaN}, two, two, new double[] {1, 1});
    refuses(
        "not finite", two, new double[] {1, Double.POSITIVE_INFINITY}, two, new double[] {1, 1});
    refuses("not finite", two, two, new double[] {1, Double.NaN}, new double[] {1, 1});
    refuses("no weight", two, two, two, new double[] {1, 0});
    refuses("no weight", two, two, two, new double[] {1, Double.POSITIVE_INFINITY});
  }

  @Test
  void gaps_cut_a_log_into_parts() {
    assertThat(Gaps.between(new double[] {0, 1, 2, 5, 6, 9}, 1.5))
        .containsExactly(new Part(0, 2), new Part(3, 4), new Part(5, 5));
    assertThat(Gaps.between(new double[0], 1)).isEmpty();
    assertThat(Gaps.between(new double[] {0.1 + 0.2, 0.8, 1.3}, 0.5)).hasSize(1);
  }

  @Test
  void turns_are_found_and_noise_is_not() {
    double[] values = {0, 0.4, 0.1, 3, 2.6, 3.2, 1, 1.3, 0.5, 2};
    assertThat(TurningPoints.of(values, 0, 9, 1))
        .containsExactly(
            new Turn(0, false), new Turn(5, true), new Turn(8, false), new Turn(9, true));
    assertThat(TurningPoints.of(new double[] {1, 1.2, 0.9}, 0, 2, 1)).isEmpty();
    assertThat(TurningPoints.of(new double[] {3, 2, 1}, 0, 2, 1))
        .isEqualTo(List.of(new Turn(0, true), new Turn(2, false)));
  }

  private static void refuses(
      String why, double[] hours, double[] excess, double[] background, double[] weights) {
    assertThatThrownBy(() -> TracerSeries.of(hours, excess, background, weights))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(why);
  }
}
