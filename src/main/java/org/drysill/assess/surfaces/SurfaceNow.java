package org.drysill.assess.surfaces;

import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * A surface at the visit.
 *
 * @param dewPoint dew point of the room's air [°C]
 * @param surface surface temperature [°C]: read, or from the factor and the outdoor reading
 * @param margin surface less dew point [K]; at or below 0 it is wet
 * @param surfaceHumidity relative humidity of the air at the surface [1]
 * @param wetBelow the outdoor temperature [°C] at which water first appears, the indoor air as it
 *     was; empty where no weather would be cold enough
 */
public record SurfaceNow(
    Figure dewPoint,
    Figure surface,
    Figure margin,
    Figure surfaceHumidity,
    Optional<Figure> wetBelow) {}
