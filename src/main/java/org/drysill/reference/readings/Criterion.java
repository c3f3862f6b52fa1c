package org.drysill.reference.readings;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A published limit of a moving average of the humidity in a room.
 *
 * @param id stable id
 * @param period the time averaged over, in words
 * @param days the same in days [d]
 * @param below the limit that the average must stay below, as ratio
 * @param writtenFor what the document wrote it for
 * @param source where it is printed
 */
public record Criterion(
    @Key(about = "Stable id", example = "month", id = true) String id,
    @Key(about = "The time averaged over", example = "a month") String period,
    @Key(about = "The same in days", min = 0, max = 366) double days,
    @Key(
            about = "The limit that the average must stay below",
            dimension = Dimension.RELATIVE_HUMIDITY,
            unit = "%",
            min = 1,
            max = 100)
        Quantity below,
    @Key(about = "What the document wrote it for", example = "new dwellings") String writtenFor,
    @Key(about = "Where it is printed") Citation source) {}
