package org.drysill.reference.ventilation;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A length with its source.
 *
 * @param value the length
 * @param source where it comes from
 */
public record SourcedLength(
    @Key(
            about = "The length",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            example = "626..926 mm")
        Quantity value,
    @Key(about = "Where it comes from") Citation source) {}
