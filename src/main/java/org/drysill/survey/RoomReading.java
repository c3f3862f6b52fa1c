package org.drysill.survey;

import java.util.Optional;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Moment;
import org.drysill.yaml.Quantity;

/**
 * Air of a room at a moment.
 *
 * @param at when
 * @param temperature air temperature
 * @param humidity relative humidity
 * @param co2 cO2
 * @param instrument the id of the instrument
 */
public record RoomReading(
    @Key(about = "When", example = "2026-01-22T10:05") Optional<Moment> at,
    @Key(
            about = "Air temperature",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = -30,
            max = 60,
            low = 5,
            high = 35,
            example = "19.8 C")
        Quantity temperature,
    @Key(
            about = "Relative humidity",
            dimension = Dimension.RELATIVE_HUMIDITY,
            unit = "%",
            min = 0,
            max = 100,
            low = 15,
            example = "64 %")
        Optional<Quantity> humidity,
    @Key(
            about = "CO2",
            dimension = Dimension.CONCENTRATION,
            unit = "ppm",
            min = 250,
            max = 20000,
            low = 380,
            high = 6000,
            example = "900 ppm")
        Optional<Quantity> co2,
    @Renamed(Renamed.As.INSTRUMENT) @Key(about = "The id of the instrument", example = "th1")
        Optional<String> instrument) {}
