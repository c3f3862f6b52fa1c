package org.drysill.assess.moisture;

import org.drysill.physics.Range;

/** From an amount in a day or a week to a rate. */
final class Rates {
  private static final double SECONDS_PER_DAY = 86_400;
  private static final double DAYS_PER_WEEK = 7;

  private Rates() {}

  /** A rate [kg/s] of an amount in a day [kg]. */
  static Range perDay(Range kg) {
    return kg.times(1 / SECONDS_PER_DAY);
  }

  /** A rate [kg/s] of an amount in a week [kg]. */
  static Range perWeek(Range kg) {
    return perDay(kg).times(1 / DAYS_PER_WEEK);
  }
}
