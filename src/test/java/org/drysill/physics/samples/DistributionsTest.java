package org.drysill.physics.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.drysill.physics.Range;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

class DistributionsTest {
  /** Against the error function of a library (Hipparchus 4.0.2). */
  @Test
  void the_normal_quantile_is_the_inverse_of_the_normal_distribution() {
    for (double z = -8; z <= 5; z += 0.01) {
      double share = Erf.erfc(-z / Math.sqrt(2)) / 2;
      assertThat(NormalQuantile.of(share)).isCloseTo(z, within(1e-9));
    }
    for (double share : new double[] {1e-10, 0.01, 0.3, 0.5, 0.7, 0.99}) {
      assertThat(NormalQuantile.of(share))
          .isCloseTo(-Math.sqrt(2) * Erf.erfcInv(2 * share), within(1e-6));
    }
    assertThat(NormalQuantile.of(0.975)).isCloseTo(1.959963984540054, within(1e-14));
    assertThatIllegalArgumentException().isThrownBy(() -> NormalQuantile.of(0));
    assertThatIllegalArgumentException().isThrownBy(() -> NormalQuantile.of(1));
  }

  @Test
  void a_range_holds_95_of_100_cases_with_its_likely_value_in_the_middle() {
    Range range = new Range(2, 4, 10);
    assertThat(TwoPieceNormal.at(range, 0)).isEqualTo(4);
    assertThat(TwoPieceNormal.at(range, 1.959963984540054)).isCloseTo(10, within(1e-12));
    assertThat(TwoPieceNormal.at(range, -1.959963984540054)).isCloseTo(2, within(1e-12));
    double[] z = normals(4000);
    long inside =
        IntStream.range(0, z.length)
            .mapToDouble(i -> TwoPieceNormal.at(range, z[i]))
            .filter(x -> x >= 2 && x <= 10)
            .count();
    assertThat(inside / 4000.0).isCloseTo(0.95, within(0.002));
    assertThat(TwoPieceNormal.at(range, 9, 0, 12)).isEqualTo(12);
    assertThat(TwoPieceNormal.at(range, -9, 0, 12)).isZero();
  }

  @Test
  void nine_in_ten_lie_between_the_quantiles() {
    double[] hundred = IntStream.rangeClosed(0, 100).mapToDouble(i -> 100 - i).toArray();
    assertThat(Quantiles.nineInTen(hundred)).isEqualTo(new Range(5, 50, 95));
    assertThat(Quantiles.nineInTen(new double[] {3})).isEqualTo(Range.exactly(3));
    assertThat(Quantiles.nineInTen(new double[] {0, 10}).likely()).isEqualTo(5);
  }

  private static double[] normals(int count) {
    double[] u = new ScrambledHalton(1).coordinates(0, count);
    return IntStream.range(0, count).mapToDouble(i -> NormalQuantile.of(u[i])).toArray();
  }
}
