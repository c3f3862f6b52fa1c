package org.drysill.assess.logs.air;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Finding;

/**
 * What the logs tell of the air of rooms and of the water given off to it.
 *
 * @param airChanges by room and tracer
 * @param nights fresh air of those who sleep in a room with a log of CO₂
 * @param events by room
 * @param production the production that the mean excess of the logs implies against the list of
 *     sources; empty without a log beside outdoor air of its own time
 */
public record LoggedAir(
    List<AirChangeOfLog> airChanges,
    List<NightAir> nights,
    List<RoomEvents> events,
    Optional<Finding> production) {
  /** Copies the lists. */
  public LoggedAir {
    airChanges = List.copyOf(airChanges);
    nights = List.copyOf(nights);
    events = List.copyOf(events);
  }

  /** The events of a room. */
  public Optional<RoomEvents> events(String room) {
    return events.stream().filter(e -> e.room().equals(room)).findFirst();
  }
}
