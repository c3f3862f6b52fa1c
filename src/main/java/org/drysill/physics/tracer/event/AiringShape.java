package org.drysill.physics.tracer.event;

import org.drysill.physics.Bounds;

/**
 * The shape of an opened window.
 *
 * @param leastFall least fall of vapour, in the unit of the series
 * @param leastKelvin least fall of temperature [K]
 * @param mostHours time within which both fall by that much [h]
 */
public record AiringShape(double leastFall, double leastKelvin, double mostHours) {
  /** Refuses a fall of nothing. */
  public AiringShape {
    Bounds.above("least fall", leastFall, 0);
    Bounds.above("least fall of temperature [K]", leastKelvin, 0);
    Bounds.above("time of the fall [h]", mostHours, 0);
  }
}
