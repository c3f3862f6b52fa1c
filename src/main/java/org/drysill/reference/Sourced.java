package org.drysill.reference;

import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A published value with its own source, in the unit that its key names.
 *
 * @param value the likely value
 * @param between the bounds, where they do not lie evenly around it
 * @param source where it comes from
 */
public record Sourced(
    @Key(about = "The likely value, or a range around it", example = "0.25") Quantity value,
    @Key(about = "The bounds", example = "0.25..0.50") Optional<Quantity> between,
    @Key(about = "Where it comes from") Citation source) {
  /** As a range. */
  public Range range() {
    return new Spread(value, between).range();
  }

  /** The likely value. */
  public double likely() {
    return value.value();
  }
}
