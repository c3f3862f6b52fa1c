package org.drysill.assess.timeline;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drysill.reference.limits.TimeLimits;
import org.drysill.survey.HazardClass;
import org.drysill.survey.Jurisdiction;
import org.drysill.survey.Survey;
import org.drysill.survey.Tenure;

/**
 * Holds the timeline of a survey against the limits of time that are known for its place and its
 * tenure. Working days leave out Saturdays, Sundays and the public holidays of the data; a limit
 * counts from the day after its event.
 */
public final class TimelineAssessor {
  private TimelineAssessor() {}

  /**
   * The days of a timeline against limits.
   *
   * @param survey what was seen
   * @param known all limits that are known
   */
  public static TimelineResult assess(Survey survey, List<TimeLimits> known) {
    if (survey.visit().timeline().isEmpty()) {
      return TimelineResult.none("");
    }
    Optional<Tenure> tenure = survey.dwelling().tenure();
    if (tenure.isEmpty()) {
      return TimelineResult.none(
          "Whether the law sets limits of time cannot be told: the survey does not say whether the"
              + " home is rented, and from whom.");
    }
    return known.stream()
        .filter(limits -> isFor(limits, survey.dwelling().jurisdiction(), tenure.get()))
        .findFirst()
        .map(limits -> new TimelineResult(Optional.of(held(survey, limits)), ""))
        .orElseGet(() -> TimelineResult.none(unknown(tenure.get())));
  }

  private static boolean isFor(TimeLimits limits, Jurisdiction place, Tenure tenure) {
    return place.rules().filter(limits.jurisdictions()::contains).isPresent()
        && limits.tenures().contains(tenure.word());
  }

  private static String unknown(Tenure tenure) {
    return "For a home that is "
        + tenure.word()
        + " in this place no limits of time are known to this program. Check the law in force.";
  }

  private static HeldLimits held(Survey survey, TimeLimits limits) {
    Story story = new Story(survey.visit().timeline());
    Holder holder = new Holder(story, new WorkingDays(limits.holidays()));
    Optional<HazardClass> stated = survey.visit().hazard();
    String hazard = stated.orElse(HazardClass.SIGNIFICANT).word();
    List<HeldLimit> held =
        limits.limits().stream().filter(l -> l.isFor(hazard)).map(holder::hold).toList();
    LocalDate known = limits.holidays().knownUntil();
    return new HeldLimits(
        limits.name(),
        limits.binds(),
        limits.covers(),
        limits.exceptions(),
        limits.inForce(),
        story.begins(),
        !story.begins().isBefore(limits.inForce()),
        hazard,
        stated.isPresent(),
        limits.holidays().of(),
        held.stream().flatMap(h -> h.lastDay().stream()).noneMatch(day -> day.isAfter(known)),
        limits.source(),
        limits.holidays().source(),
        held);
  }
}
