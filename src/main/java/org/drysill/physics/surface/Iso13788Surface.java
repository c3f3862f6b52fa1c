package org.drysill.physics.surface;

import java.util.OptionalDouble;
import org.drysill.physics.Bounds;
import org.drysill.physics.air.Iso13788Vapour;

/**
 * Surface humidity and the surface temperature that it asks for, ISO 13788:2012, clause 5 (memory).
 *
 * <pre>
 * φsi = pi / ps(Tsi)          ps(Tsi,min) = pi / φsi,max          Tsi,min = ps⁻¹(pi / φsi,max)
 * f,min = (Tsi,min − Te) / (Ti − Te)
 * </pre>
 *
 * <p>pi indoor vapour pressure [Pa]; φsi relative humidity at the surface [ratio] and φsi,max the
 * highest allowed: 0.8 by monthly mean against mould, 1.0 against water on impermeable faces; T
 * temperatures [°C].
 */
public final class Iso13788Surface {
  /** Smallest excess of indoor over outdoor temperature [K] for which a factor is asked for. */
  public static final double SMALLEST_DIFFERENCE_K = 1;

  private Iso13788Surface() {}

  /** Relative humidity at a surface φsi = pi / ps(Tsi) [ratio]; from 1 up water appears. */
  public static double humidity(double vapourPressurePa, double surfaceCelsius) {
    return Bounds.atLeast("vapour pressure [Pa]", vapourPressurePa, 0)
        / Iso13788Vapour.saturationPressurePa(surfaceCelsius);
  }

  /**
   * The coldest surface Tsi,min [°C] that keeps to φsi,max; the dew point for 1.
   *
   * @param highestHumidity φsi,max, above 0 up to 1
   */
  public static double coldestSurfaceCelsius(double vapourPressurePa, double highestHumidity) {
    Bounds.above("vapour pressure [Pa]", vapourPressurePa, 0);
    return Iso13788Vapour.dewPointCelsius(vapourPressurePa / checkedHumidity(highestHumidity));
  }

  /**
   * The temperature factor f,min that a month asks for. Above 1 where even a surface as warm as the
   * room would be too humid, below 0 where one colder than outdoors would do.
   *
   * @return empty where it is not {@value #SMALLEST_DIFFERENCE_K} K warmer indoors than outdoors:
   *     the factor means nothing then
   */
  public static OptionalDouble requiredFactor(
      double vapourPressurePa,
      double highestHumidity,
      double indoorCelsius,
      double outdoorCelsius) {
    double surface = coldestSurfaceCelsius(vapourPressurePa, highestHumidity);
    double difference =
        Bounds.finite("indoor temperature [°C]", indoorCelsius)
            - Bounds.finite("outdoor temperature [°C]", outdoorCelsius);
    return difference >= SMALLEST_DIFFERENCE_K
        ? OptionalDouble.of((surface - outdoorCelsius) / difference)
        : OptionalDouble.empty();
  }

  /**
   * The outdoor temperature [°C] below which a surface passes φsi,max, the indoor vapour pressure
   * and temperature staying as they are.
   *
   * <pre>Te = (Tsi,min − f·Ti) / (1 − f)</pre>
   *
   * <p>Where the room's own air passes φsi,max, Te lies at or above Ti.
   *
   * @param factor f of the surface, at least 0
   * @return empty for f of 1 or more: no cold outdoors reaches such a surface
   */
  public static OptionalDouble onsetOutdoorCelsius(
      double vapourPressurePa, double highestHumidity, double indoorCelsius, double factor) {
    Bounds.atLeast("temperature factor", factor, 0);
    Bounds.finite("indoor temperature [°C]", indoorCelsius);
    double surface = coldestSurfaceCelsius(vapourPressurePa, highestHumidity);
    return factor < 1
        ? OptionalDouble.of((surface - factor * indoorCelsius) / (1 - factor))
        : OptionalDouble.empty();
  }

  /**
   * The highest indoor relative humidity [ratio] that keeps a surface at or below φsi,max: φsi,max
   * · ps(Tsi) / ps(Ti), at most 1.
   */
  public static double highestIndoorHumidity(
      double factor, double indoorCelsius, double outdoorCelsius, double highestHumidity) {
    double surface = TemperatureFactor.surfaceCelsius(factor, indoorCelsius, outdoorCelsius);
    return Math.min(
        1,
        checkedHumidity(highestHumidity)
            * Iso13788Vapour.saturationPressurePa(surface)
            / Iso13788Vapour.saturationPressurePa(indoorCelsius));
  }

  private static double checkedHumidity(double ratio) {
    Bounds.above("highest surface humidity [ratio]", ratio, 0);
    return Bounds.inside("highest surface humidity [ratio]", ratio, 0, 1);
  }
}
