package org.drysill.physics.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.random.HaltonSequenceGenerator;
import org.junit.jupiter.api.Test;

/** The sequence against a library's (Hipparchus 4.0.2), and what it must keep when scrambled. */
class ScrambledHaltonTest {
  private static final ScrambledHalton SEQUENCE = new ScrambledHalton(7);

  /** Digits multiplied by a weight, as that library scrambles them. */
  private static int[][] weighted(int base, int weight) {
    int[][] places = new int[60][];
    Arrays.setAll(
        places, k -> IntStream.range(0, base).map(digit -> weight * digit % base).toArray());
    return places;
  }

  @Test
  void with_the_permutations_of_the_library_it_is_the_sequence_of_the_library() {
    int dimensions = 12;
    int[] bases = IntStream.range(0, dimensions).map(ScrambledHalton::prime).toArray();
    int[] weights = {1, 2, 3, 3, 8, 11, 12, 14, 7, 18, 12, 13};
    HaltonSequenceGenerator library = new HaltonSequenceGenerator(dimensions, bases, weights);
    for (int i = 0; i < 500; i++) {
      double[] point = library.nextVector();
      for (int d = 0; d < dimensions; d++) {
        assertThat(ScrambledHalton.radicalInverse(i, bases[d], weighted(bases[d], weights[d])))
            .isCloseTo(point[d], within(1e-12));
      }
    }
  }

  @Test
  void bases_are_the_primes() {
    assertThat(IntStream.range(0, 10).map(ScrambledHalton::prime))
        .containsExactly(2, 3, 5, 7, 11, 13, 17, 19, 23, 29);
    assertThat(ScrambledHalton.prime(99)).isEqualTo(541);
  }

  @Test
  void every_interval_of_a_power_of_the_base_holds_its_part() {
    for (int d = 0; d < 8; d++) {
      int base = ScrambledHalton.prime(d);
      int cells = base * base;
      double[] x = SEQUENCE.coordinates(d, 3 * cells);
      int[] held = new int[cells];
      Arrays.stream(x).forEach(v -> held[(int) (v * cells)]++);
      assertThat(held).containsOnly(3);
    }
  }

  /** Of 6^k points in a row each box of 2^-k by 3^-k holds one, however the digits are permuted. */
  @Test
  void boxes_of_two_dimensions_hold_their_part_too() {
    double[] x = SEQUENCE.coordinates(0, 36);
    double[] y = SEQUENCE.coordinates(1, 36);
    boolean[] held = new boolean[36];
    for (int i = 0; i < 36; i++) {
      held[((int) (x[i] * 4)) * 9 + (int) (y[i] * 9)] = true;
    }
    assertThat(held).containsOnly(true);
  }

  @Test
  void coordinates_lie_inside_and_no_two_dimensions_run_in_step() {
    for (int d = 0; d < 90; d++) {
      double[] x = SEQUENCE.coordinates(d, 200);
      assertThat(Arrays.stream(x)).allMatch(v -> v > 0 && v < 1).doesNotHaveDuplicates();
      double[] next = SEQUENCE.coordinates(d + 1, 200);
      double together =
          IntStream.range(0, 200).mapToDouble(i -> 12 * (x[i] - 0.5) * (next[i] - 0.5)).sum() / 200;
      assertThat(together).as("dimensions %d and %d", d, d + 1).isBetween(-0.25, 0.25);
    }
  }

  @Test
  void the_mean_of_a_smooth_result_is_nearer_than_by_chance() {
    int points = 200;
    double[][] even = new double[6][];
    double[][] chance = new double[6][];
    Random random = new Random(3);
    for (int d = 0; d < 6; d++) {
      even[d] = SEQUENCE.coordinates(d, points);
      chance[d] = random.doubles(points).toArray();
    }
    assertThat(Math.abs(mean(even) - 1)).isLessThan(0.01).isLessThan(Math.abs(mean(chance) - 1));
  }

  private static double mean(double[][] x) {
    return IntStream.range(0, x[0].length)
            .mapToDouble(
                i -> Arrays.stream(x).mapToDouble(d -> 0.5 + d[i]).reduce(1, (a, b) -> a * b))
            .sum()
        / x[0].length;
  }

  @Test
  void the_same_seed_gives_the_same_points_and_another_others() {
    assertThat(SEQUENCE.coordinates(5, 50)).isEqualTo(new ScrambledHalton(7).coordinates(5, 50));
    assertThat(SEQUENCE.coordinates(5, 50)).isNotEqualTo(new ScrambledHalton(8).coordinates(5, 50));
    assertThatIllegalArgumentException().isThrownBy(() -> SEQUENCE.coordinates(-1, 5));
  }
}
