package org.drysill.physics.air;

import org.drysill.physics.Humidity;
import org.drysill.physics.Temperature;

/**
 * Air at one place and moment.
 *
 * @param temperature its temperature
 * @param humidity its relative humidity, over ice below 0 °C
 */
public record AirState(Temperature temperature, Humidity humidity) {
  /** Air whose relative humidity was quoted over what the reference says. */
  public static AirState of(
      Temperature temperature, Humidity humidity, HumidityReference reference) {
    return switch (reference) {
      case OVER_ICE -> new AirState(temperature, humidity);
      case OVER_WATER ->
          new AirState(
              temperature,
              new Humidity(
                  Iso13788Vapour.humidityOverIce(temperature.celsius(), humidity.ratio())));
    };
  }

  /** Vapour pressure [Pa]. */
  public double vapourPressurePa() {
    return MoistAir.vapourPressurePa(temperature.celsius(), humidity.ratio());
  }

  /** Vapour content [kg/m³]. */
  public double vapourContentKgM3() {
    return MoistAir.vapourContentKgM3(temperature.celsius(), vapourPressurePa());
  }

  /** Dew point; the air may not be dry to the last. */
  public Temperature dewPoint() {
    return Temperature.celsius(Iso13788Vapour.dewPointCelsius(vapourPressurePa()));
  }
}
