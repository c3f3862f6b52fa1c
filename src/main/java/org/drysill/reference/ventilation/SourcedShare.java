package org.drysill.reference.ventilation;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A share with its source.
 *
 * @param value the share
 * @param source where it comes from
 */
public record SourcedShare(
    @Key(
            about = "The share",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 0,
            max = 100,
            example = "10 %")
        Quantity value,
    @Key(about = "Where it comes from") Citation source) {}
