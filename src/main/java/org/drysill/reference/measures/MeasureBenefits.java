package org.drysill.reference.measures;

import java.util.List;
import org.drysill.yaml.Key;

/**
 * What a measure is good for besides money.
 *
 * @param comfort comfort
 * @param health health
 * @param fabric the building
 */
public record MeasureBenefits(
    @Key(about = "Comfort") List<String> comfort,
    @Key(about = "Health") List<String> health,
    @Key(about = "The building") List<String> fabric) {
  /** Copies the lists. */
  public MeasureBenefits {
    comfort = List.copyOf(comfort);
    health = List.copyOf(health);
    fabric = List.copyOf(fabric);
  }
}
