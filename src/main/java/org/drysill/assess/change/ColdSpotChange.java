package org.drysill.assess.change;

import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * How a cold spot or window changed.
 *
 * @param id its id in both surveys
 * @param room id of its room
 * @param name its name in sentences
 * @param marginBefore surface temperature less dew point of the room's air [K]
 * @param marginAfter the same at the later visit [K]
 * @param mouldBefore area with mould [m²]
 * @param mouldAfter area with mould [m²]
 * @param said in words
 */
public record ColdSpotChange(
    String id,
    String room,
    String name,
    Optional<Figure> marginBefore,
    Optional<Figure> marginAfter,
    Optional<Figure> mouldBefore,
    Optional<Figure> mouldAfter,
    String said) {}
