package org.drysill.reference.ventilation;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A weather at which airing through windows is told.
 *
 * @param name its name in the report
 * @param temperatureDifference indoor less outdoor temperature
 * @param wind wind speed
 * @param winter yes for the one of which a sentence is made
 * @param source where it comes from
 */
public record AiringWeather(
    @Key(about = "Its name in the report", example = "calm winter day") String name,
    @Key(
            about = "Indoor less outdoor temperature",
            dimension = Dimension.TEMPERATURE_DIFFERENCE,
            unit = "K",
            min = 0,
            max = 60,
            example = "15 K")
        Quantity temperatureDifference,
    @Key(
            about = "Wind speed",
            dimension = Dimension.SPEED,
            unit = "m/s",
            min = 0,
            max = 30,
            example = "1 m/s")
        Quantity wind,
    @Key(about = "Yes for the one of which a sentence is made", example = "no") boolean winter,
    @Key(about = "Where it comes from") Citation source) {}
