package org.drysill.reference.surfaces;

import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * Resistance of the air film on a surface.
 *
 * @param use where it holds
 * @param value the resistance [m²·K/W]
 * @param between its bounds
 * @param source where it comes from
 */
public record SurfaceResistance(
    @Key(about = "Where it holds", example = "corner") FilmUse use,
    @Key(about = "The resistance, m²·K/W", example = "0.25") Quantity value,
    @Key(about = "Its bounds, m²·K/W", example = "0.25..0.50") Optional<Quantity> between,
    @Key(about = "Where it comes from") Citation source) {
  /** As a range [m²·K/W]. */
  public Range range() {
    return new Spread(value, between).range();
  }
}
