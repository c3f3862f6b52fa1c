package org.drysill.reference.readings;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * When a log stands for the air of a home, and how well its mean is known.
 *
 * @param shortestDays time that must be covered indoors and outdoors [d]
 * @param longestGapShare share of a spell that may lack readings
 * @param level share of cases in which the bounds of a mean hold the truth
 * @param dayToDay correlation of the means of neighbouring days
 * @param source where the length comes from
 * @param daySource where the correlation comes from
 */
public record LogSpellRules(
    @Key(about = "Days that must be covered indoors and outdoors", min = 0) Quantity shortestDays,
    @Key(
            about = "Share of a spell that may lack readings",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 0,
            max = 100)
        Quantity longestGapShare,
    @Key(
            about = "Share of cases in which the bounds of a mean hold the truth",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 0,
            max = 100)
        Quantity level,
    @Key(about = "Correlation of the means of neighbouring days", min = 0, max = 1)
        Quantity dayToDay,
    @Key(about = "Where the length comes from") Citation source,
    @Key(about = "Where the correlation comes from") Citation daySource) {}
