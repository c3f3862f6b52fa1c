package org.drysill.physics.flow;

import static org.drysill.physics.Temperature.toKelvin;

import org.drysill.physics.Bounds;

/**
 * Pressure by which a column of warm air draws, ASHRAE Handbook Fundamentals, infiltration
 * (memory).
 *
 * <pre>Δp = ρ·g·h·(Ti − Te) / T̄</pre>
 *
 * <p>Δp [Pa], ρ density at the mean temperature [kg/m³], g gravity [m/s²], h height of the column
 * [m], Ti and Te indoor and outdoor temperature, T̄ their mean [K]. Below 0 where it is warmer
 * outdoors: the column then sinks.
 */
public final class StackPressure {
  private StackPressure() {}

  /** Δp [Pa] of a column of a height of at least 0. */
  public static double pa(
      double densityKgM3, double heightM, double indoorCelsius, double outdoorCelsius) {
    Bounds.inside("indoor temperature [°C]", indoorCelsius, -100, 100);
    Bounds.inside("outdoor temperature [°C]", outdoorCelsius, -100, 100);
    return Bounds.above("density [kg/m³]", densityKgM3, 0)
        * Bs5925.GRAVITY
        * Bounds.atLeast("height [m]", heightM, 0)
        * (indoorCelsius - outdoorCelsius)
        / toKelvin((indoorCelsius + outdoorCelsius) / 2);
  }
}
