package org.drysill.assess.timeline;

import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.drysill.reference.limits.LimitUnit;
import org.drysill.reference.limits.TimeLimit;

/** Holds the days of a story against limits. */
final class Holder {
  private final Story story;
  private final WorkingDays workingDays;

  Holder(Story story, WorkingDays workingDays) {
    this.story = story;
    this.workingDays = workingDays;
  }

  HeldLimit hold(TimeLimit limit) {
    Optional<LocalDate> start = story.day(limit.from());
    Optional<LocalDate> done = story.day(limit.until());
    Optional<LocalDate> last = start.map(day -> lastDay(limit, day));
    Standing standing =
        last.flatMap(day -> done.map(d -> standing(limit, d, day))).orElse(Standing.NOT_TOLD);
    int late =
        standing == Standing.LATER
            ? (int) ChronoUnit.DAYS.between(last.orElseThrow(), done.orElseThrow())
            : 0;
    return new HeldLimit(
        limit.what(),
        limit.length(),
        limit.from(),
        limit.until(),
        start,
        last,
        done,
        standing,
        late,
        standing == Standing.NOT_TOLD ? missing(limit, start, done) : "");
  }

  private LocalDate lastDay(TimeLimit limit, LocalDate start) {
    return switch (limit.unit()) {
      case HOURS -> start.plusDays(Duration.ofHours(limit.within()).toDays());
      case WORKING_DAYS -> workingDays.after(start, limit.within());
      case WEEKS -> start.plusWeeks(limit.within());
    };
  }

  /** Of a limit in hours the last day is within it in part. */
  private static Standing standing(TimeLimit limit, LocalDate done, LocalDate last) {
    if (limit.unit() == LimitUnit.HOURS && done.equals(last)) {
      return Standing.NOT_TOLD;
    }
    return done.isAfter(last) ? Standing.LATER : Standing.WITHIN;
  }

  private static String missing(
      TimeLimit limit, Optional<LocalDate> start, Optional<LocalDate> done) {
    if (start.isEmpty()) {
      return "the timeline does not have the day of “" + limit.from() + "”";
    }
    return done.isEmpty()
        ? "the timeline does not have the day of “" + limit.until() + "”"
        : "days alone do not tell hours";
  }
}
