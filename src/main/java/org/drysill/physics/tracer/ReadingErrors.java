package org.drysill.physics.tracer;

import org.drysill.physics.Bounds;

/**
 * Standard uncertainties of a series, in its unit.
 *
 * @param reading scatter of single readings: noise and resolution
 * @param background what shifts all readings alike: offset of the sensor, doubt about outdoor air
 */
public record ReadingErrors(double reading, double background) {
  /** Refuses a series without noise, for which no threshold means anything. */
  public ReadingErrors {
    Bounds.above("uncertainty of a reading", reading, 0);
    Bounds.atLeast("uncertainty of the background", background, 0);
  }

  /** Both together, for one reading against the background. */
  double combined() {
    return Math.hypot(reading, background);
  }
}
