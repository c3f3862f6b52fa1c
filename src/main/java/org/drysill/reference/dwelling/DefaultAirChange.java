package org.drysill.reference.dwelling;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * An air change rate with its source.
 *
 * @param value the value [1/h]
 * @param source where it comes from
 */
public record DefaultAirChange(
    @Key(about = "The value", dimension = Dimension.AIR_CHANGE, unit = "/h") Quantity value,
    @Key(about = "Where it comes from") Citation source) {}
