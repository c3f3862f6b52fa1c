package org.drysill.reference.dwelling;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A length with its source.
 *
 * @param value the value [m]
 * @param source where it comes from
 */
public record DefaultLength(
    @Key(about = "The value", dimension = Dimension.LENGTH, unit = "m") Quantity value,
    @Key(about = "Where it comes from") Citation source) {}
