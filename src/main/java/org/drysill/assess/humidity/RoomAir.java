package org.drysill.assess.humidity;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.yaml.Moment;

/**
 * The air of a room at a moment.
 *
 * @param room id of the room
 * @param roomName its name in sentences
 * @param at when it was read, where that was written
 * @param temperature air temperature [°C]
 * @param relativeHumidity relative humidity as a ratio
 * @param dewPoint temperature at which a surface turns wet [°C]
 * @param vapourPressure partial pressure of the vapour [Pa]
 * @param vapourContent vapour by volume of air [kg/m³]
 * @param outdoor the outdoor air that it is compared with
 * @param excess vapour excess over outdoors, each side at its own temperature (ISO 13788) [kg/m³]
 * @param excessPressure vapour pressure excess over outdoors [Pa]
 * @param excessPressureError what the instruments' errors, independent of each other, make of the
 *     pressure excess: plus or minus, root of the sum of squares [Pa]
 * @param humidityClass what the excess would be as a monthly mean; empty where it is so warm
 *     outdoors that classes mean nothing
 */
public record RoomAir(
    String room,
    String roomName,
    Optional<Moment> at,
    Figure temperature,
    Figure relativeHumidity,
    Figure dewPoint,
    Figure vapourPressure,
    Figure vapourContent,
    OutdoorAir outdoor,
    Figure excess,
    Figure excessPressure,
    double excessPressureError,
    Optional<ClassIndication> humidityClass) {}
