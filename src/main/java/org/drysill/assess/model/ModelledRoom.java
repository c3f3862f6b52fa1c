package org.drysill.assess.model;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;

/**
 * A room, measured and modelled.
 *
 * @param room the survey's id
 * @param roomName its name in sentences
 * @param measured the vapour excess that was read [kg/m³]; empty where none was
 * @param modelled the excess that the model has there [kg/m³]
 * @param explained false where the model cannot explain the reading, which was left out
 * @param missByDeviations by how many standard deviations the reading differs from what the others
 *     make expect, above 0 where it is damper; empty where none was read
 * @param water what goes into its air [kg/s]
 * @param listedKgS the part of that which the list of sources has there [kg/s]
 * @param finding the reading against the model
 */
public record ModelledRoom(
    String room,
    String roomName,
    Optional<Figure> measured,
    Figure modelled,
    boolean explained,
    Optional<Double> missByDeviations,
    Figure water,
    double listedKgS,
    Finding finding) {}
