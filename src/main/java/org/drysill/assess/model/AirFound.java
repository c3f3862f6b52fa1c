package org.drysill.assess.model;

import java.util.List;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.assess.ventilation.rooms.RoomBalance;

/**
 * What was found of the air of a home.
 *
 * @param provided what the home gets
 * @param rooms how it moves from room to room, as is likely
 */
public record AirFound(ProvidedAir provided, List<RoomBalance> rooms) {
  /** Copies the list. */
  public AirFound {
    rooms = List.copyOf(rooms);
  }

  /** What the chapter on ventilation found. */
  public static AirFound of(VentilationResult air) {
    return new AirFound(air.provided(), air.rooms().rooms());
  }
}
