package org.drysill.reference.dwelling;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A plain number with its source.
 *
 * @param value the value [1]
 * @param source where it comes from
 */
public record DefaultNumber(
    @Key(about = "The value", dimension = Dimension.NUMBER) Quantity value,
    @Key(about = "Where it comes from") Citation source) {}
