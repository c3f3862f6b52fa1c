package org.drysill.physics.zones.fit;

import java.util.function.ToDoubleFunction;

/**
 * What is believed of the unknowns after the readings: normal in the unknowns as they are counted,
 * around the most likely state. Quantities that follow from them are carried to first order, and so
 * are their correlations.
 */
public final class Posterior {
  private static final double DIFFERENCE = 1e-5;

  private final double[] mean;
  private final double[][] covariance;

  Posterior(double[] mean, double[][] covariance) {
    this.mean = mean;
    this.covariance = covariance;
  }

  /** What was believed before any reading. */
  public static Posterior before(int unknowns) {
    double[][] unit = new double[unknowns][unknowns];
    for (int k = 0; k < unknowns; k++) {
      unit[k][k] = 1;
    }
    return new Posterior(new double[unknowns], unit);
  }

  /** Mean of an unknown, in standard deviations from what was believed before. */
  public double mean(int unknown) {
    return mean[unknown];
  }

  double[] means() {
    return mean.clone();
  }

  /** Covariance of two unknowns, counted likewise; 1 on the diagonal before any reading. */
  public double covariance(int one, int other) {
    return covariance[one][other];
  }

  /** How many unknowns there are. */
  public int unknowns() {
    return mean.length;
  }

  /**
   * A state of the unknowns as they may be together: mean + L z, L Lᵀ their covariance.
   *
   * @param z as many deviates, each normal with mean 0 and deviation 1
   */
  public double[] at(double[] z) {
    double[] state = new Cholesky(covariance).times(z);
    for (int k = 0; k < state.length; k++) {
      state[k] += mean[k];
    }
    return state;
  }

  /** The value of a quantity in the most likely state. */
  public double value(ToDoubleFunction<double[]> quantity) {
    return quantity.applyAsDouble(mean);
  }

  /** Standard deviation of a quantity. */
  public double deviation(ToDoubleFunction<double[]> quantity) {
    double[] slope = slope(quantity);
    return Math.sqrt(spread(slope, slope));
  }

  /** A positive quantity: its value, and the deviation of its logarithm. */
  public LogNormal positive(ToDoubleFunction<double[]> quantity) {
    return new LogNormal(value(quantity), deviation(z -> Math.log(quantity.applyAsDouble(z))));
  }

  /**
   * Correlation of the logarithms of two positive quantities, −1 to 1; 0 where one does not move.
   */
  public double correlation(ToDoubleFunction<double[]> one, ToDoubleFunction<double[]> other) {
    double[] a = slope(z -> Math.log(one.applyAsDouble(z)));
    double[] b = slope(z -> Math.log(other.applyAsDouble(z)));
    double both = Math.sqrt(spread(a, a) * spread(b, b));
    return both == 0 ? 0 : spread(a, b) / both;
  }

  private double spread(double[] a, double[] b) {
    double sum = 0;
    for (int k = 0; k < a.length; k++) {
      for (int l = 0; l < b.length; l++) {
        sum += a[k] * covariance[k][l] * b[l];
      }
    }
    return sum;
  }

  private double[] slope(ToDoubleFunction<double[]> quantity) {
    double[] slope = new double[mean.length];
    for (int k = 0; k < slope.length; k++) {
      double above = quantity.applyAsDouble(LeastSquares.moved(mean, k, DIFFERENCE));
      double below = quantity.applyAsDouble(LeastSquares.moved(mean, k, -DIFFERENCE));
      slope[k] = (above - below) / (2 * DIFFERENCE);
    }
    return slope;
  }
}
