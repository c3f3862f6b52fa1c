package org.drysill.survey;

import java.util.Optional;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A layer of a built-up element.
 *
 * @param material an entry of the materials table
 * @param thickness thickness
 * @param conductivity thermal conductivity, instead of the table
 */
public record Layer(
    @Key(
            about = "An entry of the materials table",
            example = "mineral wool",
            vocabulary = "material")
        String material,
    @Key(
            about = "Thickness",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            max = 5000,
            high = 1000,
            example = "50 mm")
        Quantity thickness,
    @Key(
            about = "Thermal conductivity, instead of the table",
            dimension = Dimension.CONDUCTIVITY,
            unit = "W/(m.K)",
            min = 0.001,
            max = 500,
            example = "0.035 W/mK")
        Optional<Quantity> conductivity) {}
