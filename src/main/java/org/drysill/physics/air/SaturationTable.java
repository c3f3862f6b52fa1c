package org.drysill.physics.air;

/**
 * {@link Iso13788Vapour#saturationPressurePa(double)} from a table, where it is asked for millions
 * of times: a cubic in each eighth of a kelvin from −60 to 70 °C that meets value and slope at both
 * ends. Water and ice meet at 0 °C between two cubics.
 *
 * <p>A cubic of this kind is off by at most h⁴/384 times the fourth derivative, here 2·10⁻⁷ Pa; a
 * test holds it to 10⁻⁶ Pa. Outside the table the formula itself is taken.
 */
public final class SaturationTable {
  /** The most by which it is off [Pa]. */
  public static final double ERROR_PA = 1e-6;

  private static final int LOWEST = -60;
  private static final int HIGHEST = 70;
  private static final int PER_KELVIN = 8;
  private static final int CUBIC = 4;
  private static final double[] COEFFICIENTS = coefficients();

  private SaturationTable() {}

  /** Saturation pressure [Pa]: over water from 0 °C up, over ice below. */
  public static double pressurePa(double celsius) {
    double place = (celsius - LOWEST) * PER_KELVIN;
    if (!(place >= 0 && place < (HIGHEST - LOWEST) * PER_KELVIN)) {
      return Iso13788Vapour.saturationPressurePa(celsius);
    }
    int cell = (int) place;
    double t = place - cell;
    int c = CUBIC * cell;
    return COEFFICIENTS[c]
        + t * (COEFFICIENTS[c + 1] + t * (COEFFICIENTS[c + 2] + t * COEFFICIENTS[c + 3]));
  }

  private static double[] coefficients() {
    double[] all = new double[CUBIC * (HIGHEST - LOWEST) * PER_KELVIN];
    for (int cell = 0; cell * CUBIC < all.length; cell++) {
      double from = LOWEST + (double) cell / PER_KELVIN;
      double to = from + 1.0 / PER_KELVIN;
      // Both formulas give the same at 0 °C, but not the same slope.
      boolean ice = from < 0;
      double p = Iso13788Vapour.saturationPressurePa(from);
      double q = Iso13788Vapour.saturationPressurePa(to);
      double dp = Iso13788Vapour.slopePaK(from, ice) / PER_KELVIN;
      double dq = Iso13788Vapour.slopePaK(to, ice) / PER_KELVIN;
      all[CUBIC * cell] = p;
      all[CUBIC * cell + 1] = dp;
      all[CUBIC * cell + 2] = 3 * (q - p) - 2 * dp - dq;
      all[CUBIC * cell + 3] = 2 * (p - q) + dp + dq;
    }
    return all;
  }
}
