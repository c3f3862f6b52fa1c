package org.drysill.assess.surfaces.logged;

import org.drysill.assess.Figure;
import org.drysill.assess.surfaces.SurfaceClass;

/**
 * A place over the log of its room.
 *
 * @param place the place's id
 * @param room the room's id
 * @param name its name in sentences
 * @param surface what may happen on it
 * @param loggedHours time with readings in the room and outdoors [h]
 * @param moist time in which the air at the surface held 80 % or more [h]
 * @param wet time in which water condensed on it [h]
 */
public record LoggedSurface(
    String place,
    String room,
    String name,
    SurfaceClass surface,
    double loggedHours,
    Figure moist,
    Figure wet) {}
