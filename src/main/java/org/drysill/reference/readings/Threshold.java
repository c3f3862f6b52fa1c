package org.drysill.reference.readings;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A humidity that a reading is compared with.
 *
 * @param humidity the threshold, as ratio
 * @param meaning what it means to be above it, to follow "above it"
 * @param source where it comes from
 */
public record Threshold(
    @Key(
            about = "The threshold",
            dimension = Dimension.RELATIVE_HUMIDITY,
            unit = "%",
            min = 1,
            max = 100)
        Quantity humidity,
    @Key(about = "What it means to be above it") String meaning,
    @Key(about = "Where it comes from") Citation source) {}
