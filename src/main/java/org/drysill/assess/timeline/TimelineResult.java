package org.drysill.assess.timeline;

import java.util.Optional;

/**
 * What a timeline says against limits of time.
 *
 * @param held the timeline against the limits that are known for the place and the tenure
 * @param said why there are none; empty where there are some, or no timeline
 */
public record TimelineResult(Optional<HeldLimits> held, String said) {
  static TimelineResult none(String said) {
    return new TimelineResult(Optional.empty(), said);
  }
}
