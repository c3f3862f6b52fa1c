package org.drysill.assess.ventilation.rooms;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;

/**
 * How the air moves from room to room: fans at their mean flows, every door closed, every room in
 * balance.
 *
 * @param rooms the heated rooms in the order of the survey, at the end a hall that it does not list
 *     where one is taken for granted; empty where the home has no heated room
 * @param doors the ways between them
 * @param weatherPa the pressure that stands for wind and warmth [Pa], as is likely
 * @param assumptions what was taken for granted
 */
public record RoomAirResult(
    List<RoomBalance> rooms, List<DoorAir> doors, double weatherPa, List<Assumption> assumptions) {
  /** Copies the lists. */
  public RoomAirResult {
    rooms = List.copyOf(rooms);
    doors = List.copyOf(doors);
    assumptions = List.copyOf(assumptions);
  }

  /** The air of a room by its id. */
  public Optional<RoomBalance> room(String id) {
    return rooms.stream().filter(r -> r.room().equals(id)).findFirst();
  }
}
