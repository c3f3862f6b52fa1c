package org.drysill.physics.zones.fit;

import java.util.Arrays;
import org.drysill.physics.Bounds;

/**
 * Regularised least squares by the method of Levenberg and Marquardt (textbook form; memory).
 *
 * <pre>minimise ½ Σ z² + ½ Σ ((y − f(z)) / σ)²</pre>
 *
 * <p>z unknowns, each in standard deviations from what was believed before, y readings, f what the
 * model predicts, σ standard errors. The first sum keeps every unknown where no reading speaks of
 * it. It is the most likely state for normal errors; around it the curvature (I + JᵀJ)⁻¹, J = ∂f/∂z
 * / σ, stands for the covariance, which is exact where f is linear.
 */
public final class LeastSquares {
  private static final double DIFFERENCE = 1e-5;
  private static final int MOST_PASSES = 100;
  private static final double SETTLED = 1e-12;

  private final Forward model;
  private final double[] readings;
  private final double[] errors;

  /**
   * A problem.
   *
   * @param model the model
   * @param readings what was read
   * @param errors standard error of each reading, above 0; infinite for one that is left out
   */
  public LeastSquares(Forward model, double[] readings, double[] errors) {
    Bounds.inside("errors", errors.length, readings.length, readings.length);
    for (double error : errors) {
      if (!(error > 0)) {
        throw new IllegalArgumentException("standard error must be above 0 but was " + error);
      }
    }
    this.model = model;
    this.readings = readings.clone();
    this.errors = errors.clone();
  }

  /**
   * Solves it.
   *
   * @param start where to begin; 0 everywhere is what was believed before
   */
  public Posterior solve(double... start) {
    double[] at = start.clone();
    double cost = cost(at);
    double damping = 1e-3;
    for (int pass = 0; pass < MOST_PASSES; pass++) {
      double[] next = step(at, damping);
      double lower = cost(next);
      if (lower <= cost) {
        boolean settled = cost - lower <= SETTLED * (1 + cost);
        at = next;
        cost = lower;
        damping /= 10;
        if (settled) {
          break;
        }
      } else {
        damping *= 10;
      }
    }
    double[][] slopes = slopes(at);
    return new Posterior(at, new Cholesky(curvature(slopes, 0, at.length)).inverse());
  }

  private double[] step(double[] at, double damping) {
    double[][] slopes = slopes(at);
    double[] residuals = residuals(at);
    double[] downhill = new double[at.length];
    for (int k = 0; k < at.length; k++) {
      downhill[k] = -at[k];
      for (int i = 0; i < residuals.length; i++) {
        downhill[k] += slopes[i][k] * residuals[i];
      }
    }
    double[] step = new Cholesky(curvature(slopes, damping, at.length)).solve(downhill);
    for (int k = 0; k < step.length; k++) {
      step[k] += at[k];
    }
    return step;
  }

  private double cost(double[] at) {
    return (Arrays.stream(at).map(z -> z * z).sum()
            + Arrays.stream(residuals(at)).map(r -> r * r).sum())
        / 2;
  }

  private double[] residuals(double[] at) {
    double[] predicted = model.at(at);
    double[] residuals = new double[readings.length];
    for (int i = 0; i < residuals.length; i++) {
      residuals[i] = (readings[i] - predicted[i]) / errors[i];
    }
    return residuals;
  }

  /** ∂f/∂z / σ by central differences, one row for each reading. */
  private double[][] slopes(double[] at) {
    double[][] slopes = new double[readings.length][at.length];
    for (int k = 0; k < at.length; k++) {
      double[] above = model.at(moved(at, k, DIFFERENCE));
      double[] below = model.at(moved(at, k, -DIFFERENCE));
      for (int i = 0; i < readings.length; i++) {
        slopes[i][k] = (above[i] - below[i]) / (2 * DIFFERENCE) / errors[i];
      }
    }
    return slopes;
  }

  static double[] moved(double[] at, int unknown, double by) {
    double[] moved = at.clone();
    moved[unknown] += by;
    return moved;
  }

  private static double[][] curvature(double[][] slopes, double damping, int n) {
    double[][] sum = new double[n][n];
    for (int k = 0; k < n; k++) {
      sum[k][k] = 1 + damping;
      for (double[] row : slopes) {
        for (int l = 0; l < n; l++) {
          sum[k][l] += row[k] * row[l];
        }
      }
    }
    return sum;
  }
}
