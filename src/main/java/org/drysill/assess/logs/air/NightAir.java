package org.drysill.assess.logs.air;

import org.drysill.assess.Figure;

/**
 * The fresh air of those who sleep in a room.
 *
 * @param room the room's id
 * @param roomName its name in sentences
 * @param excess mean CO₂ over outdoors in the late night [ppm]
 * @param airPerSleeper fresh air for each sleeper, near a steady state [m³/s]
 */
public record NightAir(String room, String roomName, Figure excess, Figure airPerSleeper) {}
