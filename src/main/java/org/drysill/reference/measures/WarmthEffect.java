package org.drysill.reference.measures;

import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.reference.Citation;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;

/**
 * The room that a measure makes warmer.
 *
 * @param raisesBy by how much [K]
 * @param kwhPerKelvinM2 heat in a year for each kelvin and m² of floor [kWh/(K·m²)]
 * @param source where these come from
 */
public record WarmthEffect(
    @Key(about = "By how many kelvin") Spread raisesBy,
    @Key(about = "Heat in a year for each kelvin and m2 of floor, in kWh") Spread kwhPerKelvinM2,
    @Key(about = "Where these come from") Citation source) {
  /** Refuses what cools, and heat below 0. */
  public WarmthEffect {
    if (!Stream.of(raisesBy, kwhPerKelvinM2).map(Optional::of).allMatch(Spread::isNotNegative)) {
      throw new IllegalArgumentException("raises_by and kwh_per_kelvin_m2 of 0 or more");
    }
  }
}
