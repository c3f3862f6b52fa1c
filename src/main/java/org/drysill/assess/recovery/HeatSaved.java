package org.drysill.assess.recovery;

import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * What a unit saves at the temperatures of its test.
 *
 * @param exchange outdoor air that passes its exchanger, over time [m³/s]
 * @param heat heat that it keeps in [W]
 * @param power electric power of its fan [W], where known
 * @param net heat less power [W], where power is known
 */
public record HeatSaved(
    Figure exchange, Figure heat, Optional<Figure> power, Optional<Figure> net) {}
