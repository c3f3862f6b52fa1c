package org.drysill.reference.rules;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * Extract from a wet room by a heat-recovery unit of its own.
 *
 * @param continuousShareOfHigh continuous rate as a share of the high rate
 * @param source where it comes from
 */
public record SingleRoomRule(
    @Key(
            about = "Continuous rate as a share of the high rate",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 0,
            max = 100,
            example = "50 %")
        Quantity continuousShareOfHigh,
    @Key(about = "Where it comes from") Citation source) {}
