package org.drysill.physics.zones.fit;

/** Factor L of a symmetric positive definite matrix, A = L Lᵀ. */
final class Cholesky {
  private final double[][] lower;

  Cholesky(double[][] matrix) {
    int n = matrix.length;
    lower = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = matrix[i][j];
        for (int k = 0; k < j; k++) {
          sum -= lower[i][k] * lower[j][k];
        }
        lower[i][j] = i == j ? Math.sqrt(sum) : sum / lower[j][j];
      }
    }
  }

  /** Solves A x = b. */
  double[] solve(double[] b) {
    int n = lower.length;
    double[] x = b.clone();
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < i; k++) {
        x[i] -= lower[i][k] * x[k];
      }
      x[i] /= lower[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int k = i + 1; k < n; k++) {
        x[i] -= lower[k][i] * x[k];
      }
      x[i] /= lower[i][i];
    }
    return x;
  }

  /** L z: of covariance A where z has none. */
  double[] times(double[] z) {
    double[] x = new double[lower.length];
    for (int i = 0; i < x.length; i++) {
      for (int k = 0; k <= i; k++) {
        x[i] += lower[i][k] * z[k];
      }
    }
    return x;
  }

  /** The inverse of A. */
  double[][] inverse() {
    int n = lower.length;
    double[][] inverse = new double[n][];
    for (int i = 0; i < n; i++) {
      double[] unit = new double[n];
      unit[i] = 1;
      inverse[i] = solve(unit);
    }
    return inverse;
  }
}
