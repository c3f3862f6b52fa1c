package org.drysill.physics.flow;

import org.drysill.physics.Bounds;

/**
 * Airing through the window of a room with openings on one side only.
 *
 * <pre>
 * EN 16798-7:2017   q = (A/2)·√max(0.001·u² ; 0.0035·h·|ΔT|)
 * EN 15242:2007     q = (A/2)·√(0.01 + 0.001·u² + 0.0035·h·|ΔT|)      (de Gids and Phaff 1982)
 * EN 15242:2007     Ck(α) = 2.60·10⁻⁷·α³ − 1.19·10⁻⁴·α² + 1.86·10⁻²·α
 * </pre>
 *
 * <p>q flow [m³/s] (the standards print m³/h); A opening area [m²]; u wind speed [m/s]; h height of
 * the opening [m]; ΔT indoor less outdoor temperature [K]; Ck share of the full opening of a
 * bottom-hung window at an angle α from 0 to 180°. All from memory; the ratio of densities is left
 * out. The simplified method has been found to say up to 77 % too little for roof windows.
 */
public final class WindowAiring {
  private static final double TURBULENCE = 0.01;
  private static final double WIND = 0.001;
  private static final double STACK = 0.0035;

  private WindowAiring() {}

  /** Flow by EN 16798-7 [m³/s]. */
  public static double en16798M3S(
      double areaM2, double heightM, double differenceK, double windMs) {
    return area(areaM2) / 2 * Math.sqrt(Math.max(wind(windMs), stack(heightM, differenceK)));
  }

  /** Flow by EN 15242 [m³/s]; not zero without wind and difference, for air always stirs. */
  public static double en15242M3S(
      double areaM2, double heightM, double differenceK, double windMs) {
    return area(areaM2) / 2 * Math.sqrt(TURBULENCE + wind(windMs) + stack(heightM, differenceK));
  }

  /** Share of the full opening that a bottom-hung window gives at an angle [°] from 0 to 180. */
  public static double bottomHungShare(double degrees) {
    Bounds.inside("opening angle [°]", degrees, 0, 180);
    return ((2.60e-7 * degrees - 1.19e-4) * degrees + 1.86e-2) * degrees;
  }

  private static double area(double m2) {
    return Bounds.atLeast("opening area [m²]", m2, 0);
  }

  private static double wind(double ms) {
    return WIND * Bounds.atLeast("wind speed [m/s]", ms, 0) * ms;
  }

  private static double stack(double heightM, double differenceK) {
    return STACK
        * Bounds.atLeast("height of the opening [m]", heightM, 0)
        * Math.abs(Bounds.finite("temperature difference [K]", differenceK));
  }
}
