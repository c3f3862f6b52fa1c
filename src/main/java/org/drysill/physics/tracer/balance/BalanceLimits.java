package org.drysill.physics.tracer.balance;

import org.drysill.physics.Bounds;

/**
 * When a mean excess can be balanced against production.
 *
 * @param leastExcess below it the offset of sensors decides, in the unit of the excess
 * @param leastDays in less time what rooms store decides [d]
 * @param leastCoverage least share of the period that readings cover [1]
 * @param coverageFactor how many standard uncertainties an interval takes to each side [1]
 */
public record BalanceLimits(
    double leastExcess, double leastDays, double leastCoverage, double coverageFactor) {
  /** Refuses limits that would let a division by zero through. */
  public BalanceLimits {
    Bounds.above("least excess", leastExcess, 0);
    Bounds.atLeast("least days", leastDays, 0);
    Bounds.inside("least coverage", leastCoverage, 0, 1);
    Bounds.atLeast("coverage factor", coverageFactor, 0);
  }
}
