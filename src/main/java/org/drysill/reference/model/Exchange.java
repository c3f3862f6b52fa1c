package org.drysill.reference.model;

import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * Air that passes both ways between two rooms.
 *
 * @param exchange the likely flow, averaged over day and night [m³/s]
 * @param between its bounds
 * @param source where it comes from
 */
public record Exchange(
    @Key(
            about = "The likely flow both ways, averaged over day and night",
            dimension = Dimension.AIRFLOW,
            unit = "l/s",
            min = 0,
            example = "10 l/s")
        Quantity exchange,
    @Key(about = "Its bounds", dimension = Dimension.AIRFLOW, unit = "l/s", min = 0)
        Quantity between,
    @Key(about = "Where it comes from") Citation source) {
  /** As a range [m³/s]. */
  public Range range() {
    return new Range(between.low(), exchange.value(), between.high());
  }
}
