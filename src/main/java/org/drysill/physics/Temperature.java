package org.drysill.physics;

/**
 * A temperature on a scale, not a difference of two; differences are plain doubles in K.
 *
 * @param celsius the temperature [°C], at least absolute zero
 */
public record Temperature(double celsius) implements Comparable<Temperature> {
  /** 0 °C in K; exact by the definition of the Celsius scale (SI Brochure, 9th edition). */
  public static final double ZERO_CELSIUS_K = 273.15;

  /** Refuses what lies below absolute zero, infinities and NaN. */
  public Temperature {
    Bounds.atLeast("temperature [°C]", celsius, -ZERO_CELSIUS_K);
  }

  /** A temperature in °C. */
  public static Temperature celsius(double celsius) {
    return new Temperature(celsius);
  }

  /** A temperature in K. */
  public static Temperature kelvin(double kelvin) {
    return new Temperature(kelvin - ZERO_CELSIUS_K);
  }

  /** The thermodynamic temperature [K] of a temperature [°C]. */
  public static double toKelvin(double celsius) {
    return celsius + ZERO_CELSIUS_K;
  }

  /** The thermodynamic temperature [K]. */
  public double kelvin() {
    return toKelvin(celsius);
  }

  /** How much warmer this is than another [K]. */
  public double minus(Temperature other) {
    return celsius - other.celsius;
  }

  /** A temperature that is warmer by a difference [K]. */
  public Temperature plusKelvin(double difference) {
    return new Temperature(celsius + difference);
  }

  @Override
  public int compareTo(Temperature other) {
    return Double.compare(celsius, other.celsius);
  }
}
