package org.drysill.reference.ventilation;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A temperature with its source.
 *
 * @param value the temperature
 * @param source where it comes from
 */
public record SourcedTemperature(
    @Key(
            about = "The temperature",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = -50,
            max = 50,
            example = "12 C")
        Quantity value,
    @Key(about = "Where it comes from") Citation source) {}
