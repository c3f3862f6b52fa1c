package org.drysill.physics.zones;

/**
 * Triangular factors of an M-matrix whose diagonal dominates, by rows, found and used in place. No
 * pivot is looked for: elimination keeps the dominance, so none is ever small.
 */
final class Factors {
  private final int n;
  private final double[] lu;

  Factors(int n) {
    this.n = n;
    this.lu = new double[n * n];
  }

  /**
   * Factorises a matrix with something added to its diagonal.
   *
   * @param matrix n × n by rows
   * @param added n values
   */
  void factorise(double[] matrix, double[] added) {
    System.arraycopy(matrix, 0, lu, 0, lu.length);
    for (int i = 0; i < n; i++) {
      lu[i * n + i] += added[i];
    }
    for (int k = 0; k < n; k++) {
      double pivot = lu[k * n + k];
      for (int i = k + 1; i < n; i++) {
        double factor = lu[i * n + k] / pivot;
        lu[i * n + k] = factor;
        for (int j = k + 1; j < n; j++) {
          lu[i * n + j] -= factor * lu[k * n + j];
        }
      }
    }
  }

  /** Replaces a right-hand side by the solution. */
  void solve(double[] x) {
    for (int i = 1; i < n; i++) {
      double sum = x[i];
      for (int j = 0; j < i; j++) {
        sum -= lu[i * n + j] * x[j];
      }
      x[i] = sum;
    }
    for (int i = n - 1; i >= 0; i--) {
      double sum = x[i];
      for (int j = i + 1; j < n; j++) {
        sum -= lu[i * n + j] * x[j];
      }
      x[i] = sum / lu[i * n + i];
    }
  }
}
