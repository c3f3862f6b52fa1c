package org.drysill.physics.mould;

import org.drysill.physics.Bounds;

/**
 * The mould index of a surface and how long it has been too dry to grow, hour by hour: growth by
 * {@link MouldGrowth}, decline by Hukka and Viitanen 1999 with the material factor of Ojanen et al.
 * 2010 (memory).
 *
 * <pre>
 * dM/dt = −0.00133·Cmat per hour in the first 6 hours of a dry spell
 *         0 from the 6th to the 24th hour, −0.000667·Cmat per hour after it
 * </pre>
 *
 * @param value M, 0 to 6
 * @param dryHours hours since it last could grow
 */
public record MouldIndex(double value, int dryHours) {
  /** A clean surface. */
  public static final MouldIndex CLEAN = new MouldIndex(0, 0);

  private static final double HOURS_PER_DAY = 24;
  private static final int EARLY_HOURS = 6;
  private static final int RESTING_HOURS = 24;
  private static final double EARLY_PER_HOUR = 0.00133;
  private static final double LATE_PER_HOUR = 0.000667;

  /** Refuses what is no index. */
  public MouldIndex {
    Bounds.inside("mould index", value, 0, 6);
  }

  /**
   * The index an hour later.
   *
   * @param celsius mean temperature of the surface in that hour [°C]
   * @param humidity mean relative humidity at the surface [%]
   * @param decline Cmat, 0 to 1; ASHRAE 160 takes 0.1 unless the material is known better
   */
  public MouldIndex after(
      double celsius, double humidity, MouldSensitivity surface, double decline) {
    if (MouldGrowth.grows(celsius, Math.min(100, humidity), surface)) {
      double grown = MouldGrowth.ratePerDay(celsius, humidity, value, surface) / HOURS_PER_DAY;
      return new MouldIndex(Math.min(6, value + grown), 0);
    }
    return new MouldIndex(Math.max(0, value - decline * declinePerHour()), dryHours + 1);
  }

  private double declinePerHour() {
    if (dryHours < EARLY_HOURS) {
      return EARLY_PER_HOUR;
    }
    return dryHours < RESTING_HOURS ? 0 : LATE_PER_HOUR;
  }
}
