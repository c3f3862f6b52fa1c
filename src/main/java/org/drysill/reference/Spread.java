package org.drysill.reference;

import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;
import org.drysill.yaml.Shorthand;

/**
 * A published value with its bounds, in the unit that its key names. A bare {@code a..b} has its
 * middle as the likely value.
 *
 * @param value the likely value
 * @param between the bounds, where they do not lie evenly around it
 */
@Shorthand("value")
public record Spread(
    @Key(about = "The likely value, or a range around it", example = "0.77") Quantity value,
    @Key(about = "The bounds", example = "0.56..1.0") Optional<Quantity> between) {
  /** As a range. */
  public Range range() {
    return between.map(b -> new Range(b.low(), value.value(), b.high())).orElseGet(value::range);
  }
}
