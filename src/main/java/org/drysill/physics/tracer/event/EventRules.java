package org.drysill.physics.tracer.event;

import java.util.List;
import org.drysill.physics.Bounds;

/**
 * What counts as an event of vapour.
 *
 * @param turn a rise or fall below this many standard deviations of a reading is noise
 * @param longestGapHours no event reaches across a longer gap between readings [h]
 * @param recoveredShare a rise is over once no more than this share of it is left
 * @param steeper a rise that follows a slow one is one of its own where its pace is this many times
 *     the other's
 * @param rises shapes of rises; the first that fits names the event
 * @param airing shape of an opened window
 */
public record EventRules(
    double turn,
    double longestGapHours,
    double recoveredShare,
    double steeper,
    List<RiseShape> rises,
    AiringShape airing) {
  /** Copies the list. */
  public EventRules {
    Bounds.above("turn", turn, 0);
    Bounds.above("longest gap [h]", longestGapHours, 0);
    Bounds.inside("share left", recoveredShare, 0, 1);
    Bounds.atLeast("factor of pace", steeper, 1);
    rises = List.copyOf(rises);
  }

  /** The least movement that is looked at: of interest and no noise. */
  double threshold(double scatter) {
    double smallest = airing.leastFall();
    for (RiseShape shape : rises) {
      smallest = Math.min(smallest, shape.leastRise());
    }
    return Math.max(turn * scatter, smallest);
  }

  EventKind kind(double rise, double hours) {
    return rises.stream()
        .filter(shape -> shape.fits(rise, hours))
        .map(RiseShape::kind)
        .findFirst()
        .orElse(EventKind.OTHER);
  }
}
