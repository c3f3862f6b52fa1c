package org.drysill.physics.air;

import static org.drysill.physics.Temperature.toKelvin;

import org.drysill.physics.Bounds;
import org.drysill.physics.Humidity;

/**
 * Moist air as a mixture of ideal gases, by the equations of the ASHRAE Handbook Fundamentals (SI),
 * chapter 1, with the saturation pressure of ISO 13788:2012 Annex E.
 *
 * <p>T temperature [°C], φ relative humidity [ratio], pv vapour pressure [Pa], P total pressure
 * [Pa], W humidity ratio [kg water per kg dry air]. Temperatures as {@link Iso13788Vapour} takes
 * them; relative humidity from 0 to {@link Humidity#HIGHEST}; total pressure from 50 000 to 120 000
 * Pa. Outside, arguments are refused. Real air holds 0.3 to 0.5 % more vapour than these equations
 * say (enhancement factor). Constants: memory of the handbook.
 */
public final class MoistAir {
  /** Standard pressure at sea level [Pa] (ISO 2533:1975). */
  public static final double STANDARD_PRESSURE_PA = 101325;

  /** Gas constant of water vapour [J/(kg·K)] as printed in ISO 13788. */
  public static final double VAPOUR_GAS_CONSTANT = 461.5;

  private static final double MOLAR_MASS_RATIO = 0.621945;
  private static final double DRY_AIR_GAS_CONSTANT = 287.042;
  private static final double INVERSE_MOLAR_MASS_RATIO = 1.607858;
  private static final double DRY_AIR_HEAT_J_KG_K = 1006;
  private static final double VAPORISATION_AT_ZERO_J_KG = 2_501_000;
  private static final double VAPOUR_HEAT_J_KG_K = 1860;

  private MoistAir() {}

  /** Vapour pressure pv = φ·ps(T) [Pa], φ over ice below 0 °C. */
  public static double vapourPressurePa(double celsius, double relativeHumidity) {
    return vapourPressurePa(celsius, relativeHumidity, HumidityReference.OVER_ICE);
  }

  /** Vapour pressure pv = φ·ps(T) [Pa], φ over what the reference says. */
  public static double vapourPressurePa(
      double celsius, double relativeHumidity, HumidityReference reference) {
    return checkedHumidity(relativeHumidity)
        * Iso13788Vapour.saturationPressurePa(celsius, reference);
  }

  /** Relative humidity φ = pv / ps(T) [ratio], over ice below 0 °C; above 1 where water appears. */
  public static double relativeHumidity(double celsius, double vapourPressurePa) {
    return checkedVapourPressure(vapourPressurePa) / Iso13788Vapour.saturationPressurePa(celsius);
  }

  /**
   * Dew point [°C] of air, the frost point below 0 °C.
   *
   * @param relativeHumidity above 0 (dry air has no dew point), over ice below 0 °C
   */
  public static double dewPointCelsius(double celsius, double relativeHumidity) {
    return Iso13788Vapour.dewPointCelsius(vapourPressurePa(celsius, relativeHumidity));
  }

  /** Vapour content v = pv / (461.5 · T_K) [kg/m³]; ISO 13788:2012. */
  public static double vapourContentKgM3(double celsius, double vapourPressurePa) {
    return checkedVapourPressure(vapourPressurePa)
        / (VAPOUR_GAS_CONSTANT * toKelvin(checkedTemperature(celsius)));
  }

  /** Vapour pressure pv = 461.5 · v · T_K [Pa] of a vapour content v [kg/m³]; ISO 13788:2012. */
  public static double vapourPressureOfContentPa(double celsius, double vapourContentKgM3) {
    return Bounds.atLeast("vapour content [kg/m³]", vapourContentKgM3, 0)
        * VAPOUR_GAS_CONSTANT
        * toKelvin(checkedTemperature(celsius));
  }

  /** Humidity ratio W = 0.621945 · pv / (P − pv) [kg/kg dry air]. */
  public static double humidityRatio(double vapourPressurePa, double pressurePa) {
    checkedVapourPressure(vapourPressurePa);
    return MOLAR_MASS_RATIO
        * vapourPressurePa
        / (checkedPressure(pressurePa) - belowTotal(vapourPressurePa, pressurePa));
  }

  /** Vapour pressure pv = P·W / (0.621945 + W) [Pa] of a humidity ratio W. */
  public static double vapourPressureOfRatioPa(double humidityRatio, double pressurePa) {
    Bounds.atLeast("humidity ratio [kg/kg]", humidityRatio, 0);
    return checkedPressure(pressurePa) * humidityRatio / (MOLAR_MASS_RATIO + humidityRatio);
  }

  /** Enthalpy h = 1006·T + W·(2 501 000 + 1860·T) [J/kg dry air], 0 for dry air at 0 °C. */
  public static double enthalpyJKg(double celsius, double humidityRatio) {
    Bounds.atLeast("humidity ratio [kg/kg]", humidityRatio, 0);
    return DRY_AIR_HEAT_J_KG_K * checkedTemperature(celsius)
        + humidityRatio * (VAPORISATION_AT_ZERO_J_KG + VAPOUR_HEAT_J_KG_K * celsius);
  }

  /** Specific volume 287.042 · T_K · (1 + 1.607858·W) / P [m³/kg dry air]. */
  public static double specificVolumeM3Kg(double celsius, double humidityRatio, double pressurePa) {
    Bounds.atLeast("humidity ratio [kg/kg]", humidityRatio, 0);
    return DRY_AIR_GAS_CONSTANT
        * toKelvin(checkedTemperature(celsius))
        * (1 + INVERSE_MOLAR_MASS_RATIO * humidityRatio)
        / checkedPressure(pressurePa);
  }

  /** Density of the mixture (1 + W) / specific volume [kg/m³]. */
  public static double densityKgM3(double celsius, double humidityRatio, double pressurePa) {
    return (1 + humidityRatio) / specificVolumeM3Kg(celsius, humidityRatio, pressurePa);
  }

  /**
   * Heat that a cubic metre of moist air takes up by kelvin: (1006 + 1860·W) / specific volume
   * [J/(m³·K)].
   */
  public static double heatCapacityJM3K(double celsius, double humidityRatio, double pressurePa) {
    return (DRY_AIR_HEAT_J_KG_K + VAPOUR_HEAT_J_KG_K * humidityRatio)
        / specificVolumeM3Kg(celsius, humidityRatio, pressurePa);
  }

  private static double checkedTemperature(double celsius) {
    return Bounds.inside(
        "temperature [°C]", celsius, Iso13788Vapour.LOWEST_CELSIUS, Iso13788Vapour.HIGHEST_CELSIUS);
  }

  private static double checkedHumidity(double ratio) {
    return Bounds.inside("relative humidity [ratio]", ratio, 0, Humidity.HIGHEST);
  }

  private static double checkedVapourPressure(double pa) {
    return Bounds.atLeast("vapour pressure [Pa]", pa, 0);
  }

  private static double checkedPressure(double pa) {
    return Bounds.inside("total pressure [Pa]", pa, 50_000, 120_000);
  }

  private static double belowTotal(double vapourPressurePa, double pressurePa) {
    return Bounds.inside("vapour pressure [Pa]", vapourPressurePa, 0, 0.9 * pressurePa);
  }
}
