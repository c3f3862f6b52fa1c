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
  /** Refuses a value outside of its bounds. */
  public Spread {
    if (between.filter(b -> b.low() > value.value() || b.high() < value.value()).isPresent()) {
      throw new IllegalArgumentException("a value within its bounds");
    }
  }

  /** True where value and bounds lie from {@code low} to {@code high}. */
  public boolean isWithin(double low, double high) {
    return range().low() >= low && range().high() <= high;
  }

  /** True where there is none, or value and bounds are 0 or more. */
  public static boolean isNotNegative(Optional<Spread> spread) {
    return isWithin(spread, 0, Double.POSITIVE_INFINITY);
  }

  /** True where there is none, or value and bounds lie from {@code low} to {@code high}. */
  public static boolean isWithin(Optional<Spread> spread, double low, double high) {
    return spread.map(s -> s.isWithin(low, high)).orElse(true);
  }

  /** As a range. */
  public Range range() {
    return between.map(b -> new Range(b.low(), value.value(), b.high())).orElseGet(value::range);
  }
}
