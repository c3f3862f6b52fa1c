package org.drysill.survey;

import java.util.Optional;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Moment;
import org.drysill.yaml.Quantity;

/**
 * Outdoor air at a moment.
 *
 * @param at when
 * @param temperature air temperature
 * @param humidity relative humidity, over water as instruments show it
 * @param instrument the id of the instrument
 */
public record OutdoorReading(
    @Key(about = "When", example = "2026-01-22T09:40") Optional<Moment> at,
    @Key(
            about = "Air temperature",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = -60,
            max = 55,
            low = -35,
            high = 45,
            example = "3.2 C")
        Quantity temperature,
    @Key(
            about = "Relative humidity, over water as instruments show it",
            dimension = Dimension.RELATIVE_HUMIDITY,
            unit = "%",
            min = 0,
            max = 100,
            low = 15,
            example = "88 %")
        Optional<Quantity> humidity,
    @Renamed(Renamed.As.INSTRUMENT) @Key(about = "The id of the instrument", example = "th1")
        Optional<String> instrument) {}
