package org.drysill.assess.change.visit;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.drysill.survey.TimelineEvent;

/** What was done between two visits. */
public final class Between {
  private Between() {}

  /** The events of either survey after the earlier visit, up to the day of the later one. */
  public static List<TimelineEvent> events(VisitFacts before, VisitFacts after) {
    return Stream.concat(events(before), events(after))
        .distinct()
        .filter(event -> event.date().isAfter(before.date()))
        .filter(event -> !event.date().isAfter(after.date()))
        .sorted(Comparator.comparing(TimelineEvent::date))
        .toList();
  }

  private static Stream<TimelineEvent> events(VisitFacts visit) {
    return visit.home().survey().visit().timeline().stream();
  }
}
