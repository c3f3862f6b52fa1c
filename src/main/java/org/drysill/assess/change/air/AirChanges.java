package org.drysill.assess.change.air;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.change.visit.VisitFacts;
import org.drysill.assess.humidity.RoomAir;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.survey.log.Log;

/**
 * The air of every room of both visits, matched by its id: its logs where both visits have them,
 * else its readings.
 */
public final class AirChanges {
  /** The id of the home among rooms. */
  static final String HOME = "home";

  private final VisitFacts before;
  private final VisitFacts after;
  private final ReadingRules rules;
  private final Map<RoomFacts, AirComparison> rooms = new LinkedHashMap<>();
  private final List<String> notCompared = new ArrayList<>();

  /** Compares the rooms of two visits. */
  public AirChanges(VisitFacts before, VisitFacts after, ReadingRules rules) {
    this.before = before;
    this.after = after;
    this.rules = rules;
    for (RoomFacts room : after.home().rooms()) {
      if (before.home().room(room.id()).isPresent()) {
        compare(room);
      }
    }
  }

  /** Rooms that can be compared, in the order of the later survey. */
  public List<AirChange> rooms() {
    return rooms.values().stream().map(AirComparison::change).toList();
  }

  /** What was read or logged at one visit only, a sentence each. */
  public List<String> notCompared() {
    return List.copyOf(notCompared);
  }

  /**
   * The mean of the heated rooms of both visits, each with its volume at the later visit, so that a
   * room counts alike at both; of logged rooms only, where there are some.
   */
  public Optional<AirChange> home() {
    return mean().map(AirComparison::change);
  }

  /** Whether the weather was alike: of the logs where they are compared, else of the readings. */
  public OutdoorLikeness outdoor() {
    Weather weather = new Weather(rules.change());
    return mean()
        .filter(home -> home.after().spell().logged())
        .map(
            home ->
                weather.compare(
                    Optional.of(Outdoors.of(home.before())),
                    Optional.of(Outdoors.of(home.after()))))
        .orElseGet(
            () -> weather.compare(Outdoors.read(before.home()), Outdoors.read(after.home())));
  }

  private Optional<AirComparison> mean() {
    List<RoomFacts> heated = rooms.keySet().stream().filter(RoomFacts::heated).toList();
    List<RoomFacts> logged =
        heated.stream().filter(r -> rooms.get(r).after().spell().logged()).toList();
    List<RoomFacts> counted = logged.isEmpty() ? heated : logged;
    if (counted.isEmpty()) {
      return Optional.empty();
    }
    List<AirState.Weighted> earlier = new ArrayList<>();
    List<AirState.Weighted> later = new ArrayList<>();
    for (RoomFacts room : counted) {
      double volume = room.volume().likely();
      earlier.add(new AirState.Weighted(rooms.get(room).before(), volume));
      later.add(new AirState.Weighted(rooms.get(room).after(), volume));
    }
    return Optional.of(
        new AirComparison(
            HOME, HOME, AirState.mean(earlier), AirState.mean(later), rules.change()));
  }

  private void compare(RoomFacts room) {
    Optional<AirState> loggedBefore = logged(before, room.id());
    Optional<AirState> loggedAfter = logged(after, room.id());
    if (loggedBefore.isPresent() && loggedAfter.isPresent()) {
      add(room, loggedBefore.get(), loggedAfter.get());
      return;
    }
    List<RoomAir> earlier = before.humidity().of(room.id());
    List<RoomAir> later = after.humidity().of(room.id());
    if (!earlier.isEmpty() && !later.isEmpty()) {
      add(room, AirState.of(earlier), AirState.of(later));
      return;
    }
    boolean known = !earlier.isEmpty() || loggedBefore.isPresent();
    boolean knownLater = !later.isEmpty() || loggedAfter.isPresent();
    if (known && knownLater) {
      notCompared.add(air(room) + "read at one visit and logged at the other");
    } else if (known || knownLater) {
      notCompared.add(air(room) + "read at the " + (known ? "earlier" : "later") + " visit only");
    }
  }

  private static String air(RoomFacts room) {
    return "Humidity of the " + room.name() + ": ";
  }

  private void add(RoomFacts room, AirState earlier, AirState later) {
    rooms.put(room, new AirComparison(room.id(), room.name(), earlier, later, rules.change()));
  }

  private Optional<AirState> logged(VisitFacts visit, String room) {
    Optional<Log> outdoor = visit.logs().outdoor();
    InstrumentErrors errors = new InstrumentErrors(visit.home().survey(), rules.accuracy());
    return visit
        .logs()
        .room(room)
        .flatMap(log -> outdoor.flatMap(o -> LoggedAir.of(log, o, errors, rules.change().log())));
  }
}
