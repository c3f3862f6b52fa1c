package org.drysill.survey;

import java.util.Optional;
import org.drysill.yaml.Key;

/**
 * The names of the columns of a log.
 *
 * @param time date and time
 * @param temperature air temperature
 * @param humidity relative humidity
 * @param co2 cO2
 */
public record LoggerColumns(
    @Key(about = "Date and time", example = "Date") Optional<String> time,
    @Key(about = "Air temperature", example = "Temp") Optional<String> temperature,
    @Key(about = "Relative humidity", example = "RH") Optional<String> humidity,
    @Key(about = "CO2", example = "CO2") Optional<String> co2) {}
