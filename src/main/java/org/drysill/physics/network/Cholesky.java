package org.drysill.physics.network;

/** Solves linear equations with a symmetric, positive definite matrix, by Cholesky's method. */
final class Cholesky {
  private Cholesky() {}

  /** Solves A·x = b; the lower half of the matrix is overwritten by its factor. */
  static double[] solve(double[][] matrix, double[] right) {
    factor(matrix);
    double[] x = right.clone();
    for (int i = 0; i < x.length; i++) {
      for (int k = 0; k < i; k++) {
        x[i] -= matrix[i][k] * x[k];
      }
      x[i] /= matrix[i][i];
    }
    for (int i = x.length - 1; i >= 0; i--) {
      for (int k = i + 1; k < x.length; k++) {
        x[i] -= matrix[k][i] * x[k];
      }
      x[i] /= matrix[i][i];
    }
    return x;
  }

  private static void factor(double[][] a) {
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = a[i][j];
        for (int k = 0; k < j; k++) {
          sum -= a[i][k] * a[j][k];
        }
        a[i][j] = i == j ? Math.sqrt(sum) : sum / a[j][j];
      }
    }
  }
}
