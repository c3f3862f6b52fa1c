package org.drysill.survey;

import java.util.Optional;
import org.drysill.yaml.Key;

/**
 * The names of the columns of a log.
 *
 * @param date date, where it has a column of its own
 * @param time date and time, or the time of day where the date has a column of its own
 * @param temperature air temperature
 * @param humidity relative humidity
 * @param co2 cO2
 */
public record LoggerColumns(
    @Key(about = "Date, where it has a column of its own", example = "Date") Optional<String> date,
    @Key(
            about = "Date and time, or time of day where the date has its own column",
            example = "Time")
        Optional<String> time,
    @Key(about = "Air temperature", example = "Temp") Optional<String> temperature,
    @Key(about = "Relative humidity", example = "RH") Optional<String> humidity,
    @Key(about = "CO2", example = "CO2") Optional<String> co2) {}
