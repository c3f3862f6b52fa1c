package org.drysill.report.pdf;

/** Matrices of three rows and three columns, row by row. */
final class Matrix3 {
  private Matrix3() {}

  static double[][] times(double[][] a, double[][] b) {
    double[][] product = new double[3][3];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        for (int k = 0; k < 3; k++) {
          product[row][column] += a[row][k] * b[k][column];
        }
      }
    }
    return product;
  }

  static double[] times(double[][] a, double[] v) {
    double[] product = new double[3];
    for (int row = 0; row < 3; row++) {
      product[row] = a[row][0] * v[0] + a[row][1] * v[1] + a[row][2] * v[2];
    }
    return product;
  }

  static double[][] diagonal(double[] v) {
    return new double[][] {{v[0], 0, 0}, {0, v[1], 0}, {0, 0, v[2]}};
  }

  /** The inverse by cofactors. */
  static double[][] inverse(double[][] m) {
    double[][] inverse = new double[3][3];
    double determinant = 0;
    for (int k = 0; k < 3; k++) {
      determinant += m[0][k] * cofactor(m, 0, k);
    }
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        inverse[column][row] = cofactor(m, row, column) / determinant;
      }
    }
    return inverse;
  }

  static double[] column(double[][] m, int column) {
    return new double[] {m[0][column], m[1][column], m[2][column]};
  }

  static double[] flat(double[][] m) {
    double[] flat = new double[9];
    for (int i = 0; i < 9; i++) {
      flat[i] = m[i / 3][i % 3];
    }
    return flat;
  }

  /** Taken around the corner, the minor of a 3 by 3 matrix has its sign already. */
  private static double cofactor(double[][] m, int row, int column) {
    int r1 = (row + 1) % 3;
    int r2 = (row + 2) % 3;
    int c1 = (column + 1) % 3;
    int c2 = (column + 2) % 3;
    return m[r1][c1] * m[r2][c2] - m[r1][c2] * m[r2][c1];
  }
}
