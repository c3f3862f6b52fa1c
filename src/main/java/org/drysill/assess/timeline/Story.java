package org.drysill.assess.timeline;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.survey.TimelineEvent;

/** The events of a timeline by their days, from the first report on. */
final class Story {
  private static final String REPORTED = "reported";

  private final List<TimelineEvent> events;
  private final LocalDate begins;

  /** A story of at least one event. */
  Story(List<TimelineEvent> timeline) {
    this.events = timeline.stream().sorted(Comparator.comparing(TimelineEvent::date)).toList();
    this.begins = first(REPORTED, LocalDate.MIN).orElse(events.get(0).date());
  }

  /** The day of the report; of the first event, where there is no report. */
  LocalDate begins() {
    return begins;
  }

  /** The first day of an event since the story begins. */
  Optional<LocalDate> day(String event) {
    return first(event, begins);
  }

  private Optional<LocalDate> first(String event, LocalDate from) {
    return events.stream()
        .filter(e -> e.event().word().equals(event) && !e.date().isBefore(from))
        .map(TimelineEvent::date)
        .findFirst();
  }
}
