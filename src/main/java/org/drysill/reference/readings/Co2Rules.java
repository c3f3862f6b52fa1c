package org.drysill.reference.readings;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * What CO₂ readings are compared with.
 *
 * @param outdoor CO₂ outdoors [ppm]
 * @param perPerson CO₂ that a person breathes out [m³/s]
 * @param perSleeper CO₂ that an adult breathes out asleep [m³/s]
 * @param outdoorSource where the outdoor value comes from
 * @param perPersonSource where the value of a person comes from
 * @param perSleeperSource where the value of a sleeper comes from
 */
public record Co2Rules(
    @Key(
            about = "CO2 outdoors",
            dimension = Dimension.CONCENTRATION,
            unit = "ppm",
            min = 250,
            max = 1000)
        Quantity outdoor,
    @Key(
            about = "CO2 that a person breathes out",
            dimension = Dimension.AIRFLOW,
            unit = "l/s",
            min = 0,
            max = 1)
        Quantity perPerson,
    @Key(
            about = "CO2 that an adult breathes out asleep",
            dimension = Dimension.AIRFLOW,
            unit = "l/s",
            min = 0,
            max = 1)
        Quantity perSleeper,
    @Key(about = "Where the outdoor value comes from") Citation outdoorSource,
    @Key(about = "Where the value of a person comes from") Citation perPersonSource,
    @Key(about = "Where the value of a sleeper comes from") Citation perSleeperSource) {}
