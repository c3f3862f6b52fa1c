package org.drysill.assess;

import org.drysill.survey.Room;

/**
 * A room with every gap filled.
 *
 * @param room what was seen
 * @param name its name in sentences, such as {@code kitchen} or {@code back bedroom}
 * @param floorArea floor area [m²]
 * @param height height [m]
 * @param volume air volume [m³]
 * @param setpoint usual temperature in the heating season [°C]
 */
public record RoomFacts(
    Room room, String name, Figure floorArea, Figure height, Figure volume, Figure setpoint) {
  /** The id of the survey. */
  public String id() {
    return room.id();
  }

  /** True where people stay: living rooms, bedrooms, dining rooms, studies; not kitchens. */
  public boolean habitable() {
    return switch (room.use()) {
      case BEDROOM, LIVING, DINING, STUDY -> true;
      case KITCHEN, KITCHEN_DINING, BATHROOM, SHOWER_ROOM, WC, UTILITY, HALL, STORE, LOFT, CELLAR ->
          false;
    };
  }

  /** True where water is used: kitchens, bathrooms, WCs, utility rooms. */
  public boolean wet() {
    return switch (room.use()) {
      case KITCHEN, KITCHEN_DINING, BATHROOM, SHOWER_ROOM, WC, UTILITY -> true;
      case BEDROOM, LIVING, DINING, STUDY, HALL, STORE, LOFT, CELLAR -> false;
    };
  }

  /** True where the room counts towards the heated home: everything but lofts and cellars. */
  public boolean heated() {
    return switch (room.use()) {
      case LOFT, CELLAR -> false;
      case KITCHEN,
          KITCHEN_DINING,
          BATHROOM,
          SHOWER_ROOM,
          WC,
          UTILITY,
          BEDROOM,
          LIVING,
          DINING,
          STUDY,
          HALL,
          STORE ->
          true;
    };
  }

  /** The same facts of a room of which something else was written down. */
  public RoomFacts with(Room changed) {
    return new RoomFacts(changed, name, floorArea, height, volume, setpoint);
  }
}
