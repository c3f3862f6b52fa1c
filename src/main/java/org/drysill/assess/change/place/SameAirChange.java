package org.drysill.assess.change.place;

import org.drysill.assess.Figure;
import org.drysill.assess.change.shown.Judgement;

/**
 * A surface brought to the same air: outdoors that of the rules, in the room the mean temperature
 * of both visits. What differs is each visit's own temperature factor and its own vapour excess.
 *
 * @param outdoor outdoor temperature [°C]
 * @param indoor air temperature of the room [°C]
 * @param factorBefore temperature factor
 * @param factorAfter temperature factor
 * @param read true where both factors come from temperatures read at the surface
 * @param humidityBefore relative humidity at the surface, as a ratio; above 1 it is wet
 * @param humidityAfter the same at the later visit
 * @param change after less before, in percentage points, as a ratio
 * @param judgement whether {@code change} is shown
 */
public record SameAirChange(
    Figure outdoor,
    Figure indoor,
    Figure factorBefore,
    Figure factorAfter,
    boolean read,
    Figure humidityBefore,
    Figure humidityAfter,
    Figure change,
    Judgement judgement) {}
