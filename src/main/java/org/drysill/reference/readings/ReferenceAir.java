package org.drysill.reference.readings;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * Outdoor air that two visits are brought to.
 *
 * @param temperature its temperature [°C]
 * @param humidity its relative humidity over water, as ratio
 * @param source where the values come from
 */
public record ReferenceAir(
    @Key(about = "Temperature", dimension = Dimension.TEMPERATURE, unit = "C") Quantity temperature,
    @Key(
            about = "Relative humidity over water",
            dimension = Dimension.RELATIVE_HUMIDITY,
            unit = "%",
            min = 0,
            max = 100)
        Quantity humidity,
    @Key(about = "Where the values come from") Citation source) {}
