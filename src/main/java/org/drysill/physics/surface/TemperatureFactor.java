package org.drysill.physics.surface;

import org.drysill.physics.Bounds;
import org.drysill.physics.TemperatureRatio;

/**
 * The temperature factor at the internal surface, EN ISO 10211 and ISO 13788:2012, clause 3
 * (memory).
 *
 * <pre>
 * f = (Tsi − Te) / (Ti − Te)          Tsi = Te + f·(Ti − Te)
 * f = 1 − Rsi / (1/U − Rsi,U + Rsi)   of a plane element
 * </pre>
 *
 * <p>Tsi surface, Ti indoor and Te outdoor temperature [°C]; U thermal transmittance [W/(m²·K)];
 * Rsi,U the surface resistance within U and Rsi that of the place judged [m²·K/W], larger in
 * corners and behind furniture.
 */
public final class TemperatureFactor {
  private TemperatureFactor() {}

  /**
   * The factor f [-] of a surface whose temperature was read; below 0 or above 1 where the reading
   * was.
   *
   * @param surfaceCelsius Tsi, on its room side [°C]
   * @param indoorCelsius Ti, of the air of the room [°C]
   * @param outdoorCelsius Te, of the air outdoors [°C]
   * @throws IllegalArgumentException where indoors and outdoors differ by less than {@link
   *     TemperatureRatio#SMALLEST_DIFFERENCE_K}
   */
  public static double fromTemperatures(
      double surfaceCelsius, double indoorCelsius, double outdoorCelsius) {
    return TemperatureRatio.of(surfaceCelsius, indoorCelsius, outdoorCelsius);
  }

  /**
   * Standard uncertainty of a factor that was read with independent thermometers, {@link
   * TemperatureRatio#uncertainty}.
   *
   * @param differenceK indoor less outdoor temperature [K]
   */
  public static double uncertainty(
      double factor, double differenceK, double uSurfaceK, double uIndoorK, double uOutdoorK) {
    return TemperatureRatio.uncertainty(factor, differenceK, uSurfaceK, uIndoorK, uOutdoorK);
  }

  /**
   * The factor of a plane element from its U-value.
   *
   * @param rsiWithinU Rsi,U, the internal surface resistance that the U-value was worked out with
   * @param rsiAtPlace Rsi, the internal surface resistance of the place judged, above 0
   * @throws IllegalArgumentException where 1/U leaves no resistance beyond that surface
   */
  public static double fromUValue(double uValue, double rsiWithinU, double rsiAtPlace) {
    Bounds.above("U-value [W/(m²·K)]", uValue, 0);
    Bounds.atLeast("surface resistance within the U-value [m²·K/W]", rsiWithinU, 0);
    Bounds.above("surface resistance of the place [m²·K/W]", rsiAtPlace, 0);
    double beyond =
        Bounds.above(
            "resistance beyond the surface, 1/U − Rsi [m²·K/W]", 1 / uValue - rsiWithinU, 0);
    return 1 - rsiAtPlace / (beyond + rsiAtPlace);
  }

  /** The factor of a pane or element judged with the surface resistance of its own U: 1 − U·Rsi. */
  public static double fromUValue(double uValue, double rsi) {
    return fromUValue(uValue, rsi, rsi);
  }

  /** Surface temperature Tsi = Te + f·(Ti − Te) [°C]. */
  public static double surfaceCelsius(double factor, double indoorCelsius, double outdoorCelsius) {
    return Bounds.finite("outdoor temperature [°C]", outdoorCelsius)
        + Bounds.finite("temperature factor", factor)
            * (Bounds.finite("indoor temperature [°C]", indoorCelsius) - outdoorCelsius);
  }
}
