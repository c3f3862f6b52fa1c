package org.drysill.reference.ventilation;

import org.drysill.yaml.Key;

/**
 * What is taken for granted about the way of air from room to room.
 *
 * @param leakageExponent exponent of the leaks of the home
 * @param innerRoom leaks of a room without outside wall or window, by volume, as a share of those
 *     of others
 * @param doorGap gap under a door whose gap the survey does not say
 * @param doorEdges area of the cracks at the other edges of a closed door
 * @param openWay area of a way without door, such as a stair
 */
public record RoomAirDefaults(
    @Key(about = "Exponent of the leaks of the home") LeakageExponent leakageExponent,
    @Key(
            about =
                "Leaks of a room without outside wall or window, by volume, as a share of those of"
                    + " others")
        SourcedShare innerRoom,
    @Key(about = "Gap under a door whose gap the survey does not say") SourcedLength doorGap,
    @Key(about = "Area of the cracks at the other edges of a closed door") SourcedArea doorEdges,
    @Key(about = "Area of a way without door, such as a stair") SourcedArea openWay) {}
