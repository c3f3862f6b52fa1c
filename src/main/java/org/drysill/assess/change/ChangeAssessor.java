package org.drysill.assess.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.humidity.HomeMean;
import org.drysill.assess.humidity.RoomAir;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.survey.TimelineEvent;

/** Compares two visits to the same home on equal terms. */
public final class ChangeAssessor {
  private ChangeAssessor() {}

  /**
   * Compares.
   *
   * @param before the earlier visit
   * @param after the later visit
   * @param rules when two visits can be compared
   */
  public static ChangeResult assess(VisitFacts before, VisitFacts after, ReadingRules rules) {
    OutdoorLikeness outdoor = Weather.compare(before.home(), after.home(), rules.change());
    Optional<AirChange> home = home(before, after, outdoor);
    Mould mould = new Mould(before.home(), after.home());
    return new ChangeResult(
        before.date(),
        after.date(),
        outdoor,
        rooms(before, after, outdoor),
        home,
        new ColdSpots(before, after, mould).all(),
        new Fans(rules.accuracy()).compare(before.home(), after.home()),
        mould.sumBefore(),
        mould.sumAfter(),
        between(before, after),
        notCompared(before, after),
        new ChangeFindings(rules.change(), outdoor).all(home, mould.sumBefore(), mould.sumAfter()),
        List.of(),
        ChangeFindings.CAUTION);
  }

  private static List<AirChange> rooms(
      VisitFacts before, VisitFacts after, OutdoorLikeness outdoor) {
    List<AirChange> all = new ArrayList<>();
    for (RoomFacts room : after.home().rooms()) {
      List<RoomAir> earlier = before.humidity().of(room.id());
      List<RoomAir> later = after.humidity().of(room.id());
      if (!earlier.isEmpty() && !later.isEmpty()) {
        all.add(
            new AirComparison(
                    room.id(), room.name(), AirState.of(earlier), AirState.of(later), outdoor)
                .change());
      }
    }
    return all;
  }

  private static Optional<AirChange> home(
      VisitFacts before, VisitFacts after, OutdoorLikeness outdoor) {
    List<String> both = rooms(before, after, outdoor).stream().map(AirChange::id).toList();
    return mean(before, both)
        .flatMap(
            earlier ->
                mean(after, both)
                    .map(
                        later ->
                            new AirComparison("home", "home", earlier, later, outdoor).change()));
  }

  /** The home by the rooms that were read at both visits. */
  private static Optional<AirState> mean(VisitFacts visit, List<String> rooms) {
    List<RoomAir> readings =
        visit.humidity().readings().stream().filter(r -> rooms.contains(r.room())).toList();
    return HomeMean.of(visit.home(), readings).map(AirState::of);
  }

  /** What was done after the earlier visit, up to the day of the later one. */
  private static List<TimelineEvent> between(VisitFacts before, VisitFacts after) {
    return Stream.concat(
            before.home().survey().visit().timeline().stream(),
            after.home().survey().visit().timeline().stream())
        .distinct()
        .filter(event -> event.date().isAfter(before.date()))
        .filter(event -> !event.date().isAfter(after.date()))
        .sorted(Comparator.comparing(TimelineEvent::date))
        .toList();
  }

  private static List<String> notCompared(VisitFacts before, VisitFacts after) {
    List<String> all = new ArrayList<>();
    for (RoomFacts room : after.home().rooms()) {
      boolean earlier = !before.humidity().of(room.id()).isEmpty();
      boolean later = !after.humidity().of(room.id()).isEmpty();
      if (earlier != later) {
        all.add(
            "Humidity of the "
                + room.name()
                + ": read at the "
                + (earlier ? "earlier" : "later")
                + " visit only");
      }
    }
    gone(before.home(), after.home()).forEach(all::add);
    return all;
  }

  private static Stream<String> gone(Home before, Home after) {
    return before.rooms().stream()
        .filter(room -> after.room(room.id()).isEmpty())
        .map(room -> "The " + room.name() + ": in the earlier survey only");
  }
}
