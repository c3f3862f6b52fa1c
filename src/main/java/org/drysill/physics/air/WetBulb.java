package org.drysill.physics.air;

import org.drysill.physics.Bounds;

/**
 * The thermodynamic wet bulb temperature by the ASHRAE Handbook Fundamentals (SI), chapter 1,
 * equations 33 (over water) and 35 (over ice); numbers of the 2013 edition, from memory.
 *
 * <pre>
 * Tw ≥ 0: W = [(2501 − 2.326·Tw)·Ws(Tw) − 1.006·(T − Tw)] / (2501 + 1.86·T − 4.186·Tw)
 * Tw &lt; 0: W = [(2830 − 0.24·Tw)·Ws(Tw) − 1.006·(T − Tw)] / (2830 + 1.86·T − 2.1·Tw)
 * </pre>
 *
 * <p>T dry bulb and Tw wet bulb [°C], W humidity ratio and Ws that of saturated air [kg/kg]. The
 * two branches do not quite meet at 0 °C; air that falls into the gap has a wet bulb of 0 °C. Dry
 * bulb from −60 to 90 °C, refused outside.
 */
public final class WetBulb {
  private static final double COLDEST_DRY_BULB = -60;
  private static final double WARMEST_DRY_BULB = 90;

  /** Halvings of a bracket under 200 K: 60 leave less than a rounding error. */
  private static final int HALVINGS = 60;

  private WetBulb() {}

  /**
   * Wet bulb [°C], by bisection; the dry bulb itself for saturated air.
   *
   * @param celsius dry bulb [°C]
   * @param relativeHumidity from 0 up, over ice below 0 °C
   * @param pressurePa total pressure [Pa]
   */
  public static double celsius(double celsius, double relativeHumidity, double pressurePa) {
    double ratio =
        MoistAir.humidityRatio(
            MoistAir.vapourPressurePa(dryBulb(celsius), relativeHumidity), pressurePa);
    double low = Iso13788Vapour.LOWEST_CELSIUS;
    double high = celsius;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (bulbRatio(celsius, middle, pressurePa) < ratio) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /**
   * Humidity ratio [kg/kg dry air] of air whose dry and wet bulb were read.
   *
   * @throws IllegalArgumentException where the wet bulb is above the dry bulb, or so far below that
   *     the air would hold less than no vapour
   */
  public static double humidityRatio(double celsius, double wetBulbCelsius, double pressurePa) {
    Bounds.inside("wet bulb [°C]", wetBulbCelsius, Iso13788Vapour.LOWEST_CELSIUS, dryBulb(celsius));
    return Bounds.atLeast(
        "humidity ratio of the two bulbs", bulbRatio(celsius, wetBulbCelsius, pressurePa), 0);
  }

  private static double bulbRatio(double dry, double wet, double pressurePa) {
    double saturated = MoistAir.humidityRatio(Iso13788Vapour.saturationPressurePa(wet), pressurePa);
    return wet >= 0
        ? ((2501 - 2.326 * wet) * saturated - 1.006 * (dry - wet))
            / (2501 + 1.86 * dry - 4.186 * wet)
        : ((2830 - 0.24 * wet) * saturated - 1.006 * (dry - wet)) / (2830 + 1.86 * dry - 2.1 * wet);
  }

  private static double dryBulb(double celsius) {
    return Bounds.inside("dry bulb [°C]", celsius, COLDEST_DRY_BULB, WARMEST_DRY_BULB);
  }
}
