package org.drysill.assess.change;

import org.drysill.physics.air.Iso13788Vapour;

/**
 * A change of relative humidity, split into what the change of temperature and what the change of
 * vapour make of it. With φ = p / ps(T), from state 1 to state 2:
 *
 * <pre>
 * Δφ(temperature) = ½ (p1 + p2) (1/ps(T2) − 1/ps(T1))
 * Δφ(moisture)    = ½ (p2 − p1) (1/ps(T1) + 1/ps(T2))
 * </pre>
 *
 * <p>Each part is the mean of the two orders in which the changes can be made, so neither comes
 * first; together they are the whole change, exactly. Saturation over water, as sensors show it.
 *
 * @param fromTemperature the part of temperature, as a ratio
 * @param fromMoisture the part of vapour, as a ratio
 */
record HumiditySplit(double fromTemperature, double fromMoisture) {
  static HumiditySplit of(
      double beforeCelsius, double beforePa, double afterCelsius, double afterPa) {
    double before = 1 / Iso13788Vapour.saturationPressureOverWaterPa(beforeCelsius);
    double after = 1 / Iso13788Vapour.saturationPressureOverWaterPa(afterCelsius);
    return new HumiditySplit(
        (beforePa + afterPa) / 2 * (after - before), (afterPa - beforePa) / 2 * (before + after));
  }
}
