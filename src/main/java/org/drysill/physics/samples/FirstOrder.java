package org.drysill.physics.samples;

import java.util.Comparator;
import java.util.stream.IntStream;
import org.drysill.physics.Bounds;

/**
 * How much of the spread of a result one input alone explains: the first-order index of variance,
 * from any sample of both.
 *
 * <pre>
 * S = Var(E[Y | X]) / Var(Y)
 * E[Y | X] ≈ Ȳ + Σ_j c(j) √2 cos(π j u),  c(j) = mean of Y √2 cos(π j u),  j = 1 … 6
 * R² = Σ c(j)² / Var(Y),   S = 1 − (1 − R²)(n − 1)/(n − 1 − 6), at least 0
 * </pre>
 *
 * <p>u(k) = (rank of X(k) + ½)/n. Regression on the cosines of the ranks (cosine transform, as in
 * Plischke 2012; memory) needs no special design of the samples, holds for inputs that are
 * correlated with others (whose effect it then shares) and finds effects that are no straight line.
 * The middle value corrects for what six cosines explain of pure chance.
 *
 * @param share S, 0 to 1
 * @param error its standard error by chance of the sample, √(4 R²(1 − R²)²/n + 2·6 (1 − R²)²/n²)
 * @param low expected result over the tenth of the samples in which the input is lowest
 * @param high the same where it is highest
 */
public record FirstOrder(double share, double error, double low, double high) {
  private static final int HARMONICS = 6;
  private static final double TENTH = 0.1;

  /**
   * Of samples.
   *
   * @param input value of the input in each
   * @param output value of the result in each, of the same number, at least 20
   */
  public static FirstOrder of(double[] input, double[] output) {
    int n = output.length;
    Bounds.inside("samples", n, 20, Integer.MAX_VALUE);
    Bounds.inside("samples of the input", input.length, n, n);
    double mean = IntStream.range(0, n).mapToDouble(k -> output[k]).sum() / n;
    double variance =
        IntStream.range(0, n).mapToDouble(k -> (output[k] - mean) * (output[k] - mean)).sum() / n;
    if (isConstant(input) || isConstant(output)) {
      return new FirstOrder(0, 0, mean, mean);
    }
    double[] cosines = cosines(ordered(input, output), mean);
    double explained = 0;
    double low = mean;
    double high = mean;
    for (int j = 1; j <= HARMONICS; j++) {
      double c = cosines[j - 1];
      explained += c * c / variance;
      // The mean of a cosine over the first tenth, and over the last.
      double tenth = c * Math.sqrt(2) * Math.sin(Math.PI * j * TENTH) / (Math.PI * j * TENTH);
      low += tenth;
      high += j % 2 == 0 ? tenth : -tenth;
    }
    double left = Math.max(0, 1 - explained);
    double error = left * Math.sqrt(4 * explained / n + 2.0 * HARMONICS / ((double) n * n));
    return new FirstOrder(Math.max(0, 1 - left * (n - 1) / (n - 1 - HARMONICS)), error, low, high);
  }

  /** The results in the order of the input; of equal ones the earlier sample first. */
  private static double[] ordered(double[] input, double[] output) {
    return IntStream.range(0, input.length)
        .boxed()
        .sorted(Comparator.comparingDouble((Integer k) -> input[k]))
        .mapToDouble(k -> output[k])
        .toArray();
  }

  private static double[] cosines(double[] ordered, double mean) {
    int n = ordered.length;
    double[] cosines = new double[HARMONICS];
    for (int j = 1; j <= HARMONICS; j++) {
      double sum = 0;
      for (int k = 0; k < n; k++) {
        sum += (ordered[k] - mean) * Math.cos(Math.PI * j * (k + 0.5) / n);
      }
      cosines[j - 1] = Math.sqrt(2) * sum / n;
    }
    return cosines;
  }

  private static boolean isConstant(double[] values) {
    for (double value : values) {
      if (value != values[0]) {
        return false;
      }
    }
    return true;
  }
}
