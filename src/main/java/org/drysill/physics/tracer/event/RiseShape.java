package org.drysill.physics.tracer.event;

import org.drysill.physics.Bounds;
import org.drysill.physics.tracer.Gaps;

/**
 * The shape of a kind of rise.
 *
 * @param kind what it looks like
 * @param leastRise least rise, in the unit of the series
 * @param leastHours least time from start to peak [h]
 * @param mostHours most time from start to peak [h]
 */
public record RiseShape(EventKind kind, double leastRise, double leastHours, double mostHours) {
  /** Refuses a shape that nothing has. */
  public RiseShape {
    Bounds.above("least rise", leastRise, 0);
    Bounds.inside("least time to the peak [h]", leastHours, 0, mostHours);
  }

  boolean fits(double rise, double hours) {
    return rise >= leastRise
        && hours >= leastHours - Gaps.ROUNDING_HOURS
        && hours <= mostHours + Gaps.ROUNDING_HOURS;
  }
}
