package org.drysill.reference.rules;

import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A heat-recovery unit of a room's own: its extract from a wet room, its supply to a room that was
 * added to the home.
 *
 * @param continuousShareOfHigh continuous rate as a share of the high rate
 * @param source where that comes from
 * @param addedRoomByVolume where it is printed that the unit of an added habitable room supplies
 *     the whole-home rate times the room's share of the volume of all habitable rooms
 */
public record SingleRoomRule(
    @Key(
            about = "Continuous rate as a share of the high rate",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 0,
            max = 100,
            example = "50 %")
        Quantity continuousShareOfHigh,
    @Key(about = "Where it comes from") Citation source,
    @Key(
            about =
                "Where it is printed that the unit of an added habitable room supplies the"
                    + " whole-home rate by the room's share of the volume of all habitable rooms")
        Optional<Citation> addedRoomByVolume) {}
