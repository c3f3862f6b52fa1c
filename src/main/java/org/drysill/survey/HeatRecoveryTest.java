package org.drysill.survey;

import java.util.Optional;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Moment;
import org.drysill.yaml.Quantity;

/**
 * Temperatures taken at a heat recovery unit, or a log of them.
 *
 * @param at when
 * @param indoor room air
 * @param outdoor outdoor air
 * @param supply air that it blows into the room, averaged over the supply phase where it alternates
 * @param extract air that it takes from the room, at the unit
 * @param exhaust air that it blows outside
 * @param wholeCycle the temperatures are averages over whole cycles
 * @param instrument the id of the instrument
 * @param log a log of temperatures through whole cycles
 */
public record HeatRecoveryTest(
    @Key(about = "When", example = "2026-01-22T10:30") Optional<Moment> at,
    @Key(
            about = "Room air",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = -30,
            max = 60,
            low = 5,
            high = 35,
            example = "20.0 C")
        Optional<Quantity> indoor,
    @Key(
            about = "Outdoor air",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = -60,
            max = 55,
            low = -35,
            high = 45,
            example = "3.0 C")
        Optional<Quantity> outdoor,
    @Key(
            about =
                "Air that it blows into the room, averaged over the supply phase where it alternates",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = -60,
            max = 60,
            low = -20,
            high = 35,
            example = "12.2 C")
        Optional<Quantity> supply,
    @Key(
            about = "Air that it takes from the room, at the unit",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = -30,
            max = 60,
            low = 5,
            high = 35,
            example = "20.1 C")
        Optional<Quantity> extract,
    @Key(
            about = "Air that it blows outside",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = -60,
            max = 60,
            low = -20,
            high = 35,
            example = "9.8 C")
        Optional<Quantity> exhaust,
    @Key(about = "The temperatures are averages over whole cycles", example = "yes")
        Optional<YesNo> wholeCycle,
    @Renamed(Renamed.As.INSTRUMENT) @Key(about = "The id of the instrument", example = "th1")
        Optional<String> instrument,
    @Key(about = "A log of temperatures through whole cycles", example = "logs/cycle.csv")
        Optional<CycleLogger> log) {}
