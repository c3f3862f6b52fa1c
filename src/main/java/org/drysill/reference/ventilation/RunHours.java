package org.drysill.reference.ventilation;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * How long a fan runs.
 *
 * @param run when it runs
 * @param hoursPerDay hours of a day
 * @param source where it comes from
 */
public record RunHours(
    @Key(about = "When it runs", example = "with light") RunPattern run,
    @Key(
            about = "Hours of a day",
            dimension = Dimension.HOURS_PER_DAY,
            unit = "h",
            min = 0,
            max = 24,
            example = "0.5..3 h")
        Quantity hoursPerDay,
    @Key(about = "Where it comes from") Citation source) {}
