package org.drysill.physics.tracer.fit;

/** What a curve leaves over, in the order of time. */
final class Residuals {
  private static final int PARAMETERS = 3;
  private static final double MOST_CORRELATED = 0.95;

  private final double[] values;
  private final double[] weights;

  Residuals(double[] values, double[] weights) {
    this.values = values;
    this.weights = weights;
  }

  double sumOfSquares() {
    double sum = 0;
    for (int i = 0; i < values.length; i++) {
      sum += weights[i] * values[i] * values[i];
    }
    return sum;
  }

  /** Variance of a reading of weight 1. */
  double variance() {
    return sumOfSquares() / (values.length - PARAMETERS);
  }

  /** Correlation of neighbours, at least 0: a series that swings is not worth more readings. */
  double autocorrelation() {
    double product = 0;
    for (int i = 1; i < values.length; i++) {
      product += Math.sqrt(weights[i] * weights[i - 1]) * values[i] * values[i - 1];
    }
    double all = sumOfSquares();
    return all > 0 ? Math.min(MOST_CORRELATED, Math.max(0, product / all)) : 0;
  }

  /** By how much the variance of a mean grows by the correlation. */
  double inflation() {
    double rho = autocorrelation();
    return (1 + rho) / (1 - rho);
  }

  /** Share of the variance of the readings that the curve explains. */
  double rSquared(double[] readings) {
    double sum = 0;
    double mean = 0;
    for (int i = 0; i < readings.length; i++) {
      sum += weights[i];
      mean += weights[i] * readings[i];
    }
    mean /= sum;
    double total = 0;
    for (int i = 0; i < readings.length; i++) {
      total += weights[i] * (readings[i] - mean) * (readings[i] - mean);
    }
    return 1 - sumOfSquares() / total;
  }
}
