package org.drysill.physics;

/**
 * A relative humidity.
 *
 * @param ratio vapour pressure by saturation pressure, 0 to {@value #HIGHEST}; above 1 air is
 *     supersaturated, as it may be over ice
 */
public record Humidity(double ratio) implements Comparable<Humidity> {
  /**
   * The highest relative humidity that is believed. Air saturated over water at −40 °C stands at
   * 1.47 over ice; more than that is a percentage taken for a ratio.
   */
  public static final double HIGHEST = 1.5;

  /** Refuses what is no relative humidity. */
  public Humidity {
    Bounds.inside("relative humidity [ratio]", ratio, 0, HIGHEST);
  }

  /** A relative humidity as ratio. */
  public static Humidity ratio(double ratio) {
    return new Humidity(ratio);
  }

  /** A relative humidity in percent. */
  public static Humidity percent(double percent) {
    return new Humidity(percent / 100);
  }

  /** This in percent. */
  public double percent() {
    return ratio * 100;
  }

  /** The difference to another in percentage points, never a relative change. */
  public double pointsAbove(Humidity other) {
    return (ratio - other.ratio) * 100;
  }

  @Override
  public int compareTo(Humidity other) {
    return Double.compare(ratio, other.ratio);
  }
}
