package org.drysill.options.money;

import java.util.List;
import org.drysill.physics.Range;

/**
 * Energy that a measure takes and saves in a year, each by its parts.
 *
 * @param lost to warm added air, after recovery, and warmer rooms
 * @param saved no longer lost
 * @param power electricity of fans and machines
 */
record EnergyUse(List<EnergyPart> lost, List<EnergyPart> saved, List<EnergyPart> power) {
  EnergyUse {
    lost = List.copyOf(lost);
    saved = List.copyOf(saved);
    power = List.copyOf(power);
  }

  /** Energy for heat that it takes [kWh/a]. */
  Range heatLost() {
    return EnergyPart.sum(lost);
  }

  /** Energy for heat that it saves [kWh/a]. */
  Range heatSaved() {
    return EnergyPart.sum(saved);
  }

  /** Electricity [kWh/a]. */
  Range electricity() {
    return EnergyPart.sum(power);
  }
}
