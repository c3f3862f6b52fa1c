package org.drysill.options.effect;

import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;

/** The air that a machine stands in which dries a home. */
public final class MachineAir {
  private MachineAir() {}

  /** Mean temperature that the heated rooms are kept at, by floor area, likely [°C]. */
  public static double celsius(Home home) {
    double area = 0;
    double sum = 0;
    for (RoomFacts room : home.rooms()) {
      if (room.heated()) {
        area += room.floorArea().likely();
        sum += room.floorArea().likely() * room.setpoint().likely();
      }
    }
    return area > 0 ? sum / area : home.setpoint().likely();
  }
}
