package org.drysill.reference.readings;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * When two visits can be compared.
 *
 * @param alikeWithin outdoor temperatures up to this far apart are alike [K]
 * @param source where the value comes from
 */
public record ChangeRules(
    @Key(
            about = "Outdoor temperatures up to this far apart are alike",
            dimension = Dimension.TEMPERATURE_DIFFERENCE,
            unit = "K",
            min = 0)
        Quantity alikeWithin,
    @Key(about = "Where the value comes from") Citation source) {}
