package org.drysill.assess;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.drysill.survey.Survey;

/**
 * The surveyed home with every gap filled: what the survey says where it says it, a stated
 * assumption where it does not. Everything after this reads its facts here, so that two chapters of
 * a report never fill the same gap in two ways.
 *
 * @param survey what was seen
 * @param floorArea internal floor area [m²]
 * @param volume internal air volume [m³]
 * @param storeys number of storeys
 * @param bedrooms number of bedrooms
 * @param occupants number of people who live there
 * @param setpoint usual indoor temperature in the heating season [°C]
 * @param n50 air changes at 50 Pa [1/h]
 * @param climate outdoor climate by month
 * @param rooms the rooms in the order of the survey
 * @param money prices and the horizon
 * @param assumptions what was taken for granted so far
 */
public record Home(
    Survey survey,
    Figure floorArea,
    Figure volume,
    int storeys,
    int bedrooms,
    Figure occupants,
    Figure setpoint,
    Figure n50,
    OutdoorClimate climate,
    List<RoomFacts> rooms,
    MoneyFacts money,
    List<Assumption> assumptions) {
  /** Copies the lists. */
  public Home {
    rooms = List.copyOf(rooms);
    assumptions = List.copyOf(assumptions);
  }

  /** The room with an id of the survey. */
  public Optional<RoomFacts> room(String id) {
    return rooms.stream().filter(r -> r.id().equals(id)).findFirst();
  }

  /** The same home with each room changed. */
  public Home withRooms(UnaryOperator<RoomFacts> change) {
    return new Home(
        survey,
        floorArea,
        volume,
        storeys,
        bedrooms,
        occupants,
        setpoint,
        n50,
        climate,
        rooms.stream().map(change).toList(),
        money,
        assumptions);
  }
}
