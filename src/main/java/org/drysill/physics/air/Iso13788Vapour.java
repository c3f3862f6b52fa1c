package org.drysill.physics.air;

import org.drysill.physics.Bounds;

/**
 * Saturation vapour pressure and dew point by ISO 13788:2012, Annex E (the same pair of formulas
 * stands in DIN 4108-3 and EN ISO 15927-1). The one formula of the whole program.
 *
 * <pre>
 * T ≥ 0: ps = 610.5 · exp(17.269 · T / (237.3 + T))     over water
 * T &lt; 0: ps = 610.5 · exp(21.875 · T / (265.5 + T))     over ice
 * </pre>
 *
 * <p>T temperature [°C], ps saturation pressure [Pa]. Computed from {@value #LOWEST_CELSIUS} to
 * {@value #HIGHEST_CELSIUS} °C, refused outside. It agrees with IAPWS-IF97 within 0.3 % from 0 to
 * 60 °C and with Hyland and Wexler over ice within 0.6 % from −20 to 0 °C; it is low by 1.1 % at
 * −30 °C and by 1.9 % at −40 °C. Coefficients: memory of the standard, the water pair also seen as
 * the Magnus form.
 */
public final class Iso13788Vapour {
  /** Lowest temperature that is accepted [°C]. */
  public static final double LOWEST_CELSIUS = -100;

  /** Highest temperature that is accepted [°C]. */
  public static final double HIGHEST_CELSIUS = 100;

  private static final double AT_ZERO_PA = 610.5;
  private static final double WATER_A = 17.269;
  private static final double WATER_B = 237.3;
  private static final double ICE_A = 21.875;
  private static final double ICE_B = 265.5;

  private static final double LOWEST_PA = magnus(ICE_A, ICE_B, LOWEST_CELSIUS);
  private static final double HIGHEST_PA = magnus(WATER_A, WATER_B, HIGHEST_CELSIUS);

  private Iso13788Vapour() {}

  /** Saturation pressure [Pa]: over water from 0 °C up, over ice below. */
  public static double saturationPressurePa(double celsius) {
    return inRange(celsius) >= 0
        ? magnus(WATER_A, WATER_B, celsius)
        : magnus(ICE_A, ICE_B, celsius);
  }

  /** Saturation pressure [Pa] over liquid water, supercooled below 0 °C. */
  public static double saturationPressureOverWaterPa(double celsius) {
    return magnus(WATER_A, WATER_B, inRange(celsius));
  }

  /** Saturation pressure [Pa] over what a relative humidity refers to. */
  public static double saturationPressurePa(double celsius, HumidityReference reference) {
    return switch (reference) {
      case OVER_WATER -> saturationPressureOverWaterPa(celsius);
      case OVER_ICE -> saturationPressurePa(celsius);
    };
  }

  /**
   * The temperature [°C] at which a vapour pressure saturates: dew point from 610.5 Pa up, frost
   * point below. The algebraic inverse of {@link #saturationPressurePa(double)}: with L = ln(p /
   * 610.5), T = 237.3·L / (17.269 − L) over water and T = 265.5·L / (21.875 − L) over ice.
   *
   * @param pressurePa vapour pressure [Pa], from the saturation pressure of {@value
   *     #LOWEST_CELSIUS} °C (about 0.001 Pa) to that of {@value #HIGHEST_CELSIUS} °C; dry air has
   *     no dew point
   */
  public static double dewPointCelsius(double pressurePa) {
    Bounds.inside("vapour pressure [Pa]", pressurePa, LOWEST_PA, HIGHEST_PA);
    return pressurePa >= AT_ZERO_PA
        ? inverse(WATER_A, WATER_B, pressurePa)
        : inverse(ICE_A, ICE_B, pressurePa);
  }

  /**
   * The same air's relative humidity over ice below 0 °C, where it was quoted over water: φi = φw ·
   * ps,water(T) / ps,ice(T). Unchanged from 0 °C up. May exceed 1: fog of supercooled drops is
   * supersaturated over ice.
   *
   * @param celsius temperature T of the air [°C]
   * @param relativeHumidity relative humidity over water φw, as a ratio
   */
  public static double humidityOverIce(double celsius, double relativeHumidity) {
    return Bounds.atLeast("relative humidity [ratio]", relativeHumidity, 0)
        * saturationPressureOverWaterPa(celsius)
        / saturationPressurePa(celsius);
  }

  /** Slope of the saturation pressure [Pa/K], over ice or over water. */
  static double slopePaK(double celsius, boolean ice) {
    double a = ice ? ICE_A : WATER_A;
    double b = ice ? ICE_B : WATER_B;
    return magnus(a, b, celsius) * a * b / ((b + celsius) * (b + celsius));
  }

  private static double magnus(double a, double b, double celsius) {
    return AT_ZERO_PA * Math.exp(a * celsius / (b + celsius));
  }

  private static double inverse(double a, double b, double pressurePa) {
    double l = Math.log(pressurePa / AT_ZERO_PA);
    return b * l / (a - l);
  }

  private static double inRange(double celsius) {
    return Bounds.inside("temperature [°C]", celsius, LOWEST_CELSIUS, HIGHEST_CELSIUS);
  }
}
