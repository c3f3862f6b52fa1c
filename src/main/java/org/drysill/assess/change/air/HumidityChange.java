package org.drysill.assess.change.air;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.change.shown.Judgement;

/**
 * How relative humidity changed, and by what.
 *
 * @param before as a ratio
 * @param after as a ratio
 * @param points after less before, spoken of in percentage points, as a ratio
 * @param relative the same as a share of the humidity before, as a ratio; empty where that cannot
 *     be told from none
 * @param fromTemperature the part of {@code points} that the temperature of the room makes
 * @param fromMoisture the part that the vapour in the room makes, wherever it comes from
 * @param fromOutdoors the part of that which comes with outdoor air; empty where outdoor air was
 *     not read at both visits
 * @param fromIndoors the part of that which is there on top: moisture released indoors, and the air
 *     that carries it off
 * @param judgement whether {@code points} is shown
 */
public record HumidityChange(
    Figure before,
    Figure after,
    Figure points,
    Optional<Figure> relative,
    Figure fromTemperature,
    Figure fromMoisture,
    Optional<Figure> fromOutdoors,
    Optional<Figure> fromIndoors,
    Judgement judgement) {}
