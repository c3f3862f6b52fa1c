package org.drysill.assess.change;

import org.drysill.assess.Figure;

/**
 * How the air of a room, or of the home, changed.
 *
 * @param id id of the room, or {@code home}
 * @param name its name in sentences
 * @param temperatureBefore [°C]
 * @param temperatureAfter [°C]
 * @param humidityBefore relative humidity as a ratio
 * @param humidityAfter relative humidity as a ratio
 * @param points after less before: a difference of relative humidities, spoken of in percentage
 *     points, as a ratio
 * @param relative the same as a share of the humidity before, as a ratio
 * @param pointsFromTemperature the part of {@code points} that the change of temperature makes at
 *     constant vapour pressure
 * @param pointsFromMoisture the part of {@code points} that the change of vapour pressure makes at
 *     constant temperature
 * @param excessBefore vapour pressure excess over outdoors [Pa]
 * @param excessAfter vapour pressure excess over outdoors [Pa]
 * @param excessChange after less before, with the combined error of the instruments [Pa]
 * @param shown what the excess shows
 * @param said all of it in words
 */
public record AirChange(
    String id,
    String name,
    Figure temperatureBefore,
    Figure temperatureAfter,
    Figure humidityBefore,
    Figure humidityAfter,
    Figure points,
    Figure relative,
    Figure pointsFromTemperature,
    Figure pointsFromMoisture,
    Figure excessBefore,
    Figure excessAfter,
    Figure excessChange,
    Shown shown,
    String said) {}
