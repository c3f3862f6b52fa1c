package org.drysill.assess.change.place;

import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * How a cold spot or window changed.
 *
 * @param id its id in both surveys
 * @param room id of its room
 * @param name its name in sentences
 * @param marginBefore surface temperature less dew point of the room's air at the visit [K]
 * @param marginAfter the same at the later visit [K]
 * @param sameAir the surface at the same outdoor and room air for both visits; empty where the
 *     vapour indoors or the temperature of the room is not known at both
 * @param mould its area with mould; empty where that is not known at both visits
 * @param said in words
 */
public record ColdSpotChange(
    String id,
    String room,
    String name,
    Optional<Figure> marginBefore,
    Optional<Figure> marginAfter,
    Optional<SameAirChange> sameAir,
    Optional<MouldChange> mould,
    String said) {}
