package org.drysill.assess.logs;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * The air of a room over a period, weighted by time.
 *
 * @param from its first day
 * @param to its last day
 * @param hours time with readings [h]
 * @param coverage the same as a share of the period, all days whole [1]
 * @param celsius temperature [°C]
 * @param humidity relative humidity [ratio]
 * @param contentKgM3 vapour content [kg/m³]
 * @param excessKgM3 vapour over the outdoor air [kg/m³]; empty where no outdoor air is known
 * @param excessPa vapour pressure over the outdoor air [Pa]
 * @param outdoorCelsius outdoor temperature of the same time [°C]
 */
public record PeriodMeans(
    LocalDate from,
    LocalDate to,
    double hours,
    double coverage,
    double celsius,
    double humidity,
    double contentKgM3,
    OptionalDouble excessKgM3,
    OptionalDouble excessPa,
    OptionalDouble outdoorCelsius) {}
