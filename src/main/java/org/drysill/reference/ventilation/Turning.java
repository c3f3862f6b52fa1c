package org.drysill.reference.ventilation;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * How alternating units turn where nobody has timed them.
 *
 * @param halfCycle time from one turn to the next
 * @param pause time that such a unit may stand still at each turn
 * @param source where it comes from
 */
public record Turning(
    @Key(
            about = "Time from one turn to the next",
            dimension = Dimension.DURATION,
            unit = "s",
            min = 1,
            example = "60..80 s")
        Quantity halfCycle,
    @Key(
            about = "Time that such a unit may stand still at each turn",
            dimension = Dimension.DURATION,
            unit = "s",
            min = 0,
            example = "5 s")
        Quantity pause,
    @Key(about = "Where it comes from") Citation source) {}
