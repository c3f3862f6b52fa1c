package org.drysill.reference.moisture;

import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * How much water a source gives off.
 *
 * @param per what the amount belongs to
 * @param value the likely amount [kg]
 * @param between its bounds [kg]
 * @param fuel the fuel that it belongs to, by its word in a survey; any fuel where it is missing
 * @param source where the likely amount comes from
 * @param bounds where the bounds come from
 */
public record SourceRate(
    @Key(about = "What the amount belongs to", example = "load") Per per,
    @Key(about = "The likely amount in kg", min = 0, max = 50) Quantity value,
    @Key(about = "Its bounds in kg", min = 0, max = 50) Quantity between,
    @Key(about = "The fuel that it belongs to", example = "mains gas") Optional<String> fuel,
    @Key(about = "Where the likely amount comes from") Citation source,
    @Key(about = "Where the bounds come from") Citation bounds) {
  /** The amount [kg]. */
  public Range amount() {
    return new Spread(value, Optional.of(between)).range();
  }
}
