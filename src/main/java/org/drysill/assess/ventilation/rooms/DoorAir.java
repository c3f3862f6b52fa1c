package org.drysill.assess.ventilation.rooms;

import org.drysill.assess.Figure;

/**
 * Air through a closed door, or through a way without one.
 *
 * @param from id of the room that it comes from, averaged over time
 * @param to id of the room that it goes to; either is empty for a hall that the survey does not
 *     list
 * @param recorded true where the survey lists the door
 * @param open true for a way without door, such as a stair
 * @param flowM3S the flow, averaged over time [m³/s], at least 0
 * @param pressureAllRunning pressure across it while every fan runs [Pa], at least 0
 */
public record DoorAir(
    String from,
    String to,
    boolean recorded,
    boolean open,
    double flowM3S,
    Figure pressureAllRunning) {}
