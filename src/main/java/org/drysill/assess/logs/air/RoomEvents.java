package org.drysill.assess.logs.air;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.drysill.physics.tracer.event.EventKind;

/**
 * Rises and sudden falls of vapour in a room.
 *
 * @param room the room's id
 * @param roomName its name in sentences
 * @param groups by kind
 */
public record RoomEvents(String room, String roomName, List<Group> groups) {
  /** Copies the list. */
  public RoomEvents {
    groups = List.copyOf(groups);
  }

  /**
   * Events of one kind.
   *
   * @param kind what their shape looks like
   * @param perWeek how many in a week of readings
   * @param changeKgM3 typical change of vapour, negative for a fall, the median [kg/m³]
   * @param recoveryHours typical time from the turn until it is over, the median of those that can
   *     be followed [h]
   * @param days when they began, in days since the log began
   */
  public record Group(
      EventKind kind,
      double perWeek,
      double changeKgM3,
      OptionalDouble recoveryHours,
      List<Double> days) {
    /** Copies the list. */
    public Group {
      days = List.copyOf(days);
    }

    /** How many. */
    public int count() {
      return days.size();
    }
  }

  /** The events of one kind. */
  public Optional<Group> of(EventKind kind) {
    return groups.stream().filter(g -> g.kind() == kind).findFirst();
  }
}
