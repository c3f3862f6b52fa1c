package org.drysill.physics.tracer.fit;

import org.drysill.physics.Bounds;

/**
 * Student's t distribution for a whole number of degrees of freedom, by the finite sums of
 * Abramowitz and Stegun 1964, 26.7.3 and 26.7.4 (memory).
 *
 * <pre>
 * θ = arctan(t / √ν)
 * odd ν    A(t|ν) = 2/π · (θ + sin θ · (cos θ + 2/3·cos³θ + … + (2·4···(ν−3))/(3·5···(ν−2))·cos^(ν−2) θ))
 * even ν   A(t|ν) = sin θ · (1 + 1/2·cos²θ + … + (1·3···(ν−3))/(2·4···(ν−2))·cos^(ν−2) θ)
 * </pre>
 *
 * <p>A probability that a value lies from −t to t. Above {@value #MANY} degrees the distribution of
 * {@value #MANY} stands in: its 95 % point is 0.1 % too wide.
 */
public final class StudentT {
  private static final int MANY = 1000;

  private StudentT() {}

  /**
   * The t within which a share of all values lies, on both sides of zero together.
   *
   * @param confidence the share, above 0 and below 1
   * @param degreesOfFreedom at least 1; what lies between whole numbers is cut off, which widens
   */
  public static double twoSided(double confidence, double degreesOfFreedom) {
    Bounds.inside("confidence", confidence, 1e-6, 1 - 1e-6);
    int degrees =
        (int) Math.min(MANY, Bounds.inside("degrees of freedom", degreesOfFreedom, 1, 1e12));
    double low = 0;
    double high = Math.PI / 2;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (within(middle, degrees) < confidence) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.sqrt(degrees) * Math.tan(low);
  }

  /** A(t|ν) with θ in place of t. */
  private static double within(double theta, int degrees) {
    boolean odd = degrees % 2 == 1;
    double cosine = Math.cos(theta);
    double term = odd ? cosine : 1;
    double sum = 0;
    for (int k = odd ? 1 : 0; k <= degrees - 2; k += 2) {
      sum += term;
      term *= cosine * cosine * (k + 1) / (k + 2);
    }
    return odd ? 2 / Math.PI * (theta + Math.sin(theta) * sum) : Math.sin(theta) * sum;
  }
}
