package org.drysill.assess.surfaces.months;

import java.util.function.DoubleFunction;
import org.drysill.assess.OutdoorClimate;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.reference.surfaces.SurfaceDefaults;

/**
 * The air on both sides of a surface in one month.
 *
 * @param outdoor outdoor temperature that the surface is judged at [°C]
 * @param indoor indoor temperature [°C]
 * @param vapour vapour pressure indoors [Pa]
 */
public record MonthAir(double outdoor, double indoor, Range vapour) {
  /**
   * The air of a month.
   *
   * @param month the outdoor means
   * @param setpoint indoor temperature while it is heated [°C]
   * @param excess vapour pressure excess indoors [Pa] by outdoor temperature [°C]
   * @param coldNight true for a cold night of the month, false for its mean
   */
  public static MonthAir of(
      OutdoorClimate.Month month,
      double setpoint,
      DoubleFunction<Range> excess,
      boolean coldNight,
      SurfaceDefaults defaults) {
    double indoor = Math.max(setpoint, month.temperature() + defaults.freeRunningRise().likely());
    double outdoor =
        coldNight ? month.temperature() - defaults.coldNightDrop().likely() : month.temperature();
    Range mean = outdoorVapour(month);
    Range outdoors =
        coldNight ? nightVapour(mean, outdoor, defaults.coldNightHumidity().likely()) : mean;
    Range vapour = outdoors.plus(excess.apply(outdoor));
    return new MonthAir(
        outdoor, indoor, capped(vapour, Iso13788Vapour.saturationPressurePa(indoor)));
  }

  /** Relative humidity of the indoor air [1]. */
  public Range indoorHumidity() {
    return vapour.times(1 / Iso13788Vapour.saturationPressurePa(indoor));
  }

  /** Dew point of the indoor air [°C]. */
  public Range dewPoint() {
    return new Range(
        Iso13788Vapour.dewPointCelsius(vapour.low()),
        Iso13788Vapour.dewPointCelsius(vapour.likely()),
        Iso13788Vapour.dewPointCelsius(vapour.high()));
  }

  /**
   * Mean vapour pressure outdoors in a month [Pa]. A climate's humidity is over water; no outdoor
   * air holds more than saturation over ice.
   */
  public static Range outdoorVapour(OutdoorClimate.Month month) {
    double overWater = Iso13788Vapour.saturationPressureOverWaterPa(month.temperature());
    return capped(
        month.relativeHumidity().times(overWater),
        Iso13788Vapour.saturationPressurePa(month.temperature()));
  }

  /** Cold nights are nearly saturated, but never moister than the month. */
  private static Range nightVapour(Range mean, double outdoor, double humidity) {
    return capped(mean, humidity * Iso13788Vapour.saturationPressurePa(outdoor));
  }

  private static Range capped(Range pressure, double cap) {
    return new Range(
        Math.min(cap, pressure.low()),
        Math.min(cap, pressure.likely()),
        Math.min(cap, pressure.high()));
  }
}
