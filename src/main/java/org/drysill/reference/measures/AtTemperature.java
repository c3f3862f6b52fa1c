package org.drysill.reference.measures;

import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;

/**
 * What a machine does that takes water from air of a temperature.
 *
 * @param celsius temperature of the air [°C]
 * @param removedKgPerDay water that it takes from the air [kg/d]
 * @param kwhPerKg electricity for each kg of water [kWh/kg]
 */
public record AtTemperature(
    @Key(about = "Temperature of the air, in C", example = "18") double celsius,
    @Key(about = "Water taken from the air, in kg a day") Spread removedKgPerDay,
    @Key(about = "Electricity for each kg of water, in kWh") Spread kwhPerKg) {
  /** Refuses amounts below 0. */
  public AtTemperature {
    if (!Stream.of(removedKgPerDay, kwhPerKg).map(Optional::of).allMatch(Spread::isNotNegative)) {
      throw new IllegalArgumentException("water and electricity of 0 or more");
    }
  }
}
