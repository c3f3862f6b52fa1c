package org.drysill.assess.ventilation.rooms;

import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * Air into and out of a room, averaged over time, as is likely. In and out are equal.
 *
 * @param room the room's id; empty for a hall that the survey does not list
 * @param name its name in sentences
 * @param storey its storey, 0 at the entrance
 * @param hall true where it is a hall or landing
 * @param floorAreaM2 floor area [m²]; 0 where it is not known
 * @param supplyM3S outdoor air blown in by fans [m³/s]
 * @param leaksInM3S outdoor air in through leaks and ventilators [m³/s]
 * @param fromRoomsM3S air in from other rooms [m³/s]
 * @param extractM3S air taken out by fans [m³/s]
 * @param leaksOutM3S air out through leaks and ventilators [m³/s]
 * @param toRoomsM3S air out to other rooms [m³/s]
 * @param pressurePa pressure above still air outside [Pa]
 * @param outdoorAir outdoor air in, by fans and leaks; empty for a hall that is not listed
 * @param airChange the same as air changes of the room
 */
public record RoomBalance(
    String room,
    String name,
    int storey,
    boolean hall,
    double floorAreaM2,
    double supplyM3S,
    double leaksInM3S,
    double fromRoomsM3S,
    double extractM3S,
    double leaksOutM3S,
    double toRoomsM3S,
    double pressurePa,
    Optional<Figure> outdoorAir,
    Optional<Figure> airChange) {
  /** All air that comes in [m³/s]. */
  public double inM3S() {
    return supplyM3S + leaksInM3S + fromRoomsM3S;
  }

  /** All air that goes out [m³/s]. */
  public double outM3S() {
    return extractM3S + leaksOutM3S + toRoomsM3S;
  }
}
