package org.drysill.survey;

import java.util.Optional;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A layer of a built-up element.
 *
 * @param material an entry of the materials table
 * @param thickness thickness; may be missing for membranes, paints and air gaps
 * @param conductivity thermal conductivity, instead of the table
 * @param vapourFactor vapour resistance factor, instead of the table
 * @param sd vapour-equivalent thickness of still air, instead of the table
 */
public record Layer(
    @Key(
            about = "An entry of the materials table",
            example = "mineral wool",
            vocabulary = "material")
        String material,
    @Key(
            about = "Thickness; may be missing for membranes, paints and air gaps",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            max = 5000,
            high = 1000,
            example = "50 mm")
        Optional<Quantity> thickness,
    @Key(
            about = "Thermal conductivity, instead of the table",
            dimension = Dimension.CONDUCTIVITY,
            unit = "W/(m.K)",
            min = 0.001,
            max = 500,
            example = "0.035 W/mK")
        Optional<Quantity> conductivity,
    @Key(
            about = "Vapour resistance factor by the maker, instead of the table",
            min = 1,
            max = 10_000_000,
            example = "8..12")
        Optional<Quantity> vapourFactor,
    @Key(
            about = "Vapour-equivalent thickness of still air by the maker, instead of the table",
            dimension = Dimension.LENGTH,
            unit = "m",
            min = 0.001,
            max = 100_000,
            example = "2 m")
        Optional<Quantity> sd) {}
