package org.drysill.physics.tracer.fit;

/**
 * The normal equations of a least-squares problem of three parameters, gathered row by row: J'WJ·x
 * = J'Wr.
 */
final class NormalEquations {
  private static final int SIZE = 3;

  private final double[][] matrix = new double[SIZE][SIZE];
  private final double[] right = new double[SIZE];

  /** Takes one row in. */
  void add(double[] gradient, double residual, double weight) {
    for (int i = 0; i < SIZE; i++) {
      right[i] += weight * gradient[i] * residual;
      for (int j = 0; j < SIZE; j++) {
        matrix[i][j] += weight * gradient[i] * gradient[j];
      }
    }
  }

  /** The step of Levenberg and Marquardt: the diagonal grows by a share. */
  double[] step(double damping) {
    double[][] inverse = inverse(damping);
    double[] step = new double[SIZE];
    for (int i = 0; i < SIZE; i++) {
      for (int j = 0; j < SIZE; j++) {
        step[i] += inverse[i][j] * right[j];
      }
    }
    return step;
  }

  /** The covariance of the parameters where the weights are inverse variances. */
  double[][] covariance() {
    return inverse(0);
  }

  /** By cofactors of the symmetric matrix, scaled to a diagonal of ones first. */
  private double[][] inverse(double damping) {
    double[] scale = new double[SIZE];
    for (int i = 0; i < SIZE; i++) {
      scale[i] = Math.sqrt(matrix[i][i] * (1 + damping));
    }
    double a = matrix[0][1] / (scale[0] * scale[1]);
    double b = matrix[0][2] / (scale[0] * scale[2]);
    double c = matrix[1][2] / (scale[1] * scale[2]);
    double determinant = 1 + 2 * a * b * c - a * a - b * b - c * c;
    double[][] inverse = {
      {1 - c * c, b * c - a, a * c - b},
      {b * c - a, 1 - b * b, a * b - c},
      {a * c - b, a * b - c, 1 - a * a}
    };
    for (int i = 0; i < SIZE; i++) {
      for (int j = 0; j < SIZE; j++) {
        inverse[i][j] /= determinant * scale[i] * scale[j];
      }
    }
    return inverse;
  }
}
