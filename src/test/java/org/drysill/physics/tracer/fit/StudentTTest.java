package org.drysill.physics.tracer.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentTTest {
  /** Table of percentage points that every statistics book prints (memory). */
  @ParameterizedTest
  @CsvSource({
    "0.90, 1, 6.314",
    "0.95, 1, 12.706",
    "0.95, 2, 4.303",
    "0.95, 3, 3.182",
    "0.95, 4, 2.776",
    "0.95, 5, 2.571",
    "0.95, 10, 2.228",
    "0.95, 30, 2.042",
    "0.99, 7, 3.499",
    "0.95, 120, 1.980"
  })
  void percentage_points_are_those_of_the_table(double confidence, int degrees, double t) {
    assertThat(StudentT.twoSided(confidence, degrees)).isCloseTo(t, within(0.0006));
  }

  @Test
  void many_degrees_give_the_normal_distribution_and_parts_of_one_are_cut_off() {
    assertThat(StudentT.twoSided(0.95, 1e9)).isCloseTo(1.96, within(0.003));
    assertThat(StudentT.twoSided(0.95, 4.9)).isEqualTo(StudentT.twoSided(0.95, 4));
  }

  @Test
  void less_than_one_degree_is_refused() {
    assertThatThrownBy(() -> StudentT.twoSided(0.95, 0.5))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
