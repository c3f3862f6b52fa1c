package org.drysill.physics.flow;

/**
 * Infiltration by normalized leakage.
 *
 * <pre>
 * NL    = 1000 · (ELA / A) · (H / Hr)^0.4
 * Q_inf = NL · wsf · A / d
 * </pre>
 *
 * <p>ELA effective leakage area at 4 Pa [m²], A floor area [m²], H height between the lowest and
 * the highest ceiling, Hr 2.5 m, wsf weather and shielding factor of the place [1], about 0.3 to
 * 0.9, d what the form of the equation divides by: 1.44 m² by l/s, or 7.3 ft² by cfm. The two forms
 * are rounded and differ by 0.2 %. The floor area cancels. ANSI/ASHRAE Standard 62.2-2013, 4.1.2;
 * from memory.
 */
public final class NormalizedLeakage {
  private static final double SCALE = 1000;
  private static final double HEIGHT_EXPONENT = 0.4;

  private NormalizedLeakage() {}

  /**
   * Normalized leakage NL [1].
   *
   * @param leakageAreaM2 effective leakage area at 4 Pa [m²], at least 0
   * @param floorAreaM2 floor area [m²], above 0
   * @param heightRatio H / Hr [1], above 0
   */
  public static double of(double leakageAreaM2, double floorAreaM2, double heightRatio) {
    return SCALE * leakageAreaM2 / floorAreaM2 * Math.pow(heightRatio, HEIGHT_EXPONENT);
  }

  /**
   * Infiltration Q_inf [m³/s].
   *
   * @param normalizedLeakage NL [1]
   * @param weatherFactor wsf [1]
   * @param floorAreaM2 floor area [m²]
   * @param divisor d [m²/(m³/s)]: 1440 in the form by l/s and m²
   */
  public static double flowM3S(
      double normalizedLeakage, double weatherFactor, double floorAreaM2, double divisor) {
    return normalizedLeakage * weatherFactor * floorAreaM2 / divisor;
  }
}
