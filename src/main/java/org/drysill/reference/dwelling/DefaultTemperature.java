package org.drysill.reference.dwelling;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A temperature with its source.
 *
 * @param value the value [°C]
 * @param source where it comes from
 */
public record DefaultTemperature(
    @Key(about = "The value", dimension = Dimension.TEMPERATURE, unit = "C") Quantity value,
    @Key(about = "Where it comes from") Citation source) {}
