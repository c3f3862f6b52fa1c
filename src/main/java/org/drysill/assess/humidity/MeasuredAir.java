package org.drysill.assess.humidity;

import org.drysill.physics.Range;
import org.drysill.physics.air.HumidityReference;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.air.MoistAir;

/**
 * Air as an instrument shows it, with the bounds of its errors.
 *
 * @param temperature air temperature with its bounds [°C]
 * @param humidity relative humidity with its bounds, over water as sensors show it, as ratio
 */
public record MeasuredAir(Range temperature, Range humidity) {
  /** No hygrometer shows less, and air without any vapour has no dew point. */
  private static final double DRIEST = 0.01;

  /** Keeps the humidity within what air can have. */
  public MeasuredAir {
    humidity =
        new Range(within(humidity.low()), within(humidity.likely()), within(humidity.high()));
  }

  /** Vapour pressure [Pa]; its bounds are those of both errors at their worst together. */
  public Range vapourPressure() {
    return new Range(
        pressure(temperature.low(), humidity.low()),
        pressure(temperature.likely(), humidity.likely()),
        pressure(temperature.high(), humidity.high()));
  }

  /**
   * Error of the vapour pressure [Pa], plus or minus: root of the sum of squares of what each of
   * the two independent errors makes.
   */
  public double vapourPressureError() {
    double byHumidity =
        half(
            pressure(temperature.likely(), humidity.low()),
            pressure(temperature.likely(), humidity.high()));
    double byTemperature =
        half(
            pressure(temperature.low(), humidity.likely()),
            pressure(temperature.high(), humidity.likely()));
    return Math.hypot(byHumidity, byTemperature);
  }

  /** Vapour content [kg/m³], bounded as the vapour pressure is. */
  public Range vapourContent() {
    return new Range(
        content(temperature.low(), humidity.low()),
        content(temperature.likely(), humidity.likely()),
        content(temperature.high(), humidity.high()));
  }

  /** Dew point, the frost point below 0 °C [°C]. */
  Range dewPoint() {
    Range pressure = vapourPressure();
    return new Range(
        Iso13788Vapour.dewPointCelsius(pressure.low()),
        Iso13788Vapour.dewPointCelsius(pressure.likely()),
        Iso13788Vapour.dewPointCelsius(pressure.high()));
  }

  private static double pressure(double celsius, double ratio) {
    return MoistAir.vapourPressurePa(celsius, ratio, HumidityReference.OVER_WATER);
  }

  private static double content(double celsius, double ratio) {
    return MoistAir.vapourContentKgM3(celsius, pressure(celsius, ratio));
  }

  private static double half(double low, double high) {
    return (high - low) / 2;
  }

  private static double within(double ratio) {
    return Math.min(1, Math.max(DRIEST, ratio));
  }
}
