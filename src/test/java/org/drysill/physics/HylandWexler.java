package org.drysill.physics;

/**
 * Saturation pressure by Hyland and Wexler 1983, ASHRAE Handbook Fundamentals chapter 1, equations
 * 5 and 6 (memory, water coefficients also seen in an instrument manual). An oracle beside ours;
 * its own rows of the reference table hold it to 0.1 %.
 */
public final class HylandWexler {
  private HylandWexler() {}

  /** Over ice below 0 °C, over water from 0 °C up [Pa]. */
  public static double saturationPressurePa(double celsius) {
    double t = celsius + 273.15;
    return celsius < 0 ? ice(t) : water(t);
  }

  private static double ice(double t) {
    return Math.exp(
        -5674.5359 / t
            + 6.3925247
            - 9.677843e-3 * t
            + 6.2215701e-7 * t * t
            + 2.0747825e-9 * t * t * t
            - 9.484024e-13 * t * t * t * t
            + 4.1635019 * Math.log(t));
  }

  private static double water(double t) {
    return Math.exp(
        -5800.2206 / t
            + 1.3914993
            - 4.8640239e-2 * t
            + 4.1764768e-5 * t * t
            - 1.4452093e-8 * t * t * t
            + 6.5459673 * Math.log(t));
  }
}
