package org.drysill.physics.moisture;

import org.drysill.physics.Bounds;

/**
 * Indoor climate of dwellings by outdoor temperature, ISO 13788:2012, Annex A.1, Figure A.1, for
 * continental and tropical climates (the same lines stand in EN 15026, Annex C; memory). For want
 * of readings, not against them.
 *
 * <pre>
 * Ti = 20 °C for Te ≤ 10, 25 °C for Te ≥ 20, straight between
 * φi = φ0 for Te ≤ −10, φ0 + 0.30 for Te ≥ 20, straight between; φ0 = 0.35 normal, 0.40 high
 * </pre>
 *
 * <p>Te monthly mean outdoor temperature [°C]; constant beyond the ends.
 */
public final class ContinentalIndoorClimate {
  private ContinentalIndoorClimate() {}

  /** How many people and how much washing a home holds. */
  public enum Occupancy {
    /** Normal occupancy. */
    NORMAL(0.35),
    /** High occupancy. */
    HIGH(0.40);

    private final double driest;

    Occupancy(double driest) {
      this.driest = driest;
    }
  }

  /** Indoor temperature Ti [°C]. */
  public static double temperatureCelsius(double outdoorCelsius) {
    return 20 + 5 * risen(outdoorCelsius, 10, 20);
  }

  /** Indoor relative humidity φi [ratio]. */
  public static double relativeHumidity(double outdoorCelsius, Occupancy occupancy) {
    return occupancy.driest + 0.30 * risen(outdoorCelsius, -10, 20);
  }

  private static double risen(double outdoorCelsius, double from, double to) {
    Bounds.finite("outdoor temperature [°C]", outdoorCelsius);
    return Math.min(1, Math.max(0, (outdoorCelsius - from) / (to - from)));
  }
}
