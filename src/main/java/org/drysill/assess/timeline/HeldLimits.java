package org.drysill.assess.timeline;

import java.time.LocalDate;
import java.util.List;
import org.drysill.reference.Citation;

/**
 * A timeline against the limits of one law.
 *
 * @param name what the limits are called in sentences
 * @param binds whom they bind
 * @param covers what they are about
 * @param exceptions what can stand against them
 * @param inForce the day from which they bind
 * @param begins the day with which the timeline begins: of the report, where it has one
 * @param binding true where that day is not before the limits came into force
 * @param hazard the class of hazard whose limits were taken
 * @param hazardStated false where the survey does not say it
 * @param holidaysOf whose public holidays were taken out of working days
 * @param holidaysKnown true where all public holidays up to the last day are known
 * @param source where the limits stand
 * @param holidays where the public holidays stand
 * @param limits the limits
 */
public record HeldLimits(
    String name,
    String binds,
    String covers,
    String exceptions,
    LocalDate inForce,
    LocalDate begins,
    boolean binding,
    String hazard,
    boolean hazardStated,
    String holidaysOf,
    boolean holidaysKnown,
    Citation source,
    Citation holidays,
    List<HeldLimit> limits) {
  /** Copies the list. */
  public HeldLimits {
    limits = List.copyOf(limits);
  }
}
