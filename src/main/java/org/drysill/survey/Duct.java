package org.drysill.survey;

import java.util.Optional;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A duct between a fan and the outside.
 *
 * @param diameter inner diameter
 * @param length length
 * @param bends number of bends
 * @param material what it is made of
 */
public record Duct(
    @Key(
            about = "Inner diameter",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            max = 1000,
            low = 60,
            high = 400,
            example = "160 mm")
        Optional<Quantity> diameter,
    @Key(
            about = "Length",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            max = 100000,
            example = "350 mm")
        Optional<Quantity> length,
    @Key(about = "Number of bends", min = 0, max = 50, high = 10, example = "0")
        Optional<Integer> bends,
    @Key(about = "What it is made of", example = "metal sleeve") Optional<DuctMaterial> material) {}
