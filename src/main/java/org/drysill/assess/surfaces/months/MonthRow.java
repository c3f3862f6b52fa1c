package org.drysill.assess.surfaces.months;

import java.util.Optional;
import org.drysill.physics.Range;

/**
 * A surface in one month.
 *
 * @param month 1 for January to 12
 * @param outdoor the outdoor temperature that it is judged at [°C]: the month's mean for opaque
 *     surfaces, a cold night of the month for glass
 * @param indoor indoor air temperature [°C]
 * @param vapourPressure vapour pressure indoors [Pa]
 * @param indoorHumidity relative humidity of the indoor air [1]
 * @param dewPoint dew point of the indoor air [°C]
 * @param surface surface temperature [°C]
 * @param surfaceHumidity relative humidity of the air at the surface [1]; above 1 it would be wet
 * @param highestIndoorHumidity the highest relative humidity indoors [1] at which the surface stays
 *     below its limit
 * @param requiredFactor the temperature factor that it would need; empty in months in which it is
 *     hardly colder outdoors than indoors and the factor loses its meaning
 * @param margin actual less required factor; negative where it falls short
 * @param risk at the likely values
 * @param worst at the unfavourable ends of all ranges
 */
public record MonthRow(
    int month,
    double outdoor,
    double indoor,
    Range vapourPressure,
    Range indoorHumidity,
    Range dewPoint,
    Range surface,
    Range surfaceHumidity,
    Range highestIndoorHumidity,
    Optional<Range> requiredFactor,
    Optional<Range> margin,
    Risk risk,
    Risk worst) {}
