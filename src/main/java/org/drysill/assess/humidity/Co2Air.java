package org.drysill.assess.humidity;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.yaml.Moment;

/**
 * What a CO₂ reading says.
 *
 * @param room id of the room
 * @param roomName its name in sentences
 * @param at when it was read
 * @param concentration what was read [ppm]
 * @param excess over outdoor air [ppm]
 * @param airPerPerson fresh air for each person present if the air had come to a steady state
 *     [m³/s]; empty where the excess is within the error of the meter
 * @param said what it means, in words, with the reservation that it is indicative
 */
public record Co2Air(
    String room,
    String roomName,
    Optional<Moment> at,
    Figure concentration,
    Figure excess,
    Optional<Figure> airPerPerson,
    String said) {}
