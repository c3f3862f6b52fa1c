package org.drysill.reference.ventilation;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * An air-change figure that people are told.
 *
 * @param airChange the figure
 * @param meaning what it is a figure of, in one sentence
 * @param wholeHome yes where it speaks of the whole home all the time
 * @param source where it comes from
 */
public record QuotedRate(
    @Key(
            about = "The figure",
            dimension = Dimension.AIR_CHANGE,
            unit = "/h",
            min = 0,
            example = "0.35 /h")
        Quantity airChange,
    @Key(about = "What it is a figure of, in one sentence") String meaning,
    @Key(about = "Yes where it speaks of the whole home all the time", example = "yes")
        boolean wholeHome,
    @Key(about = "Where it comes from") Citation source) {}
