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
 * @param height height of its outer end above the inner one
 * @param bend how it bends
 * @param grille what covers its end in the room, beside the fan itself
 * @param cowl what covers its end outside
 * @param backdraughtShutter whether a shutter in it stops air from blowing back
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
    @Key(about = "What it is made of", example = "metal sleeve") Optional<DuctMaterial> material,
    @Key(
            about = "Height of its outer end above the inner one, of a passive stack",
            dimension = Dimension.LENGTH,
            unit = "m",
            min = 0,
            max = 100,
            high = 15,
            example = "5.5 m")
        Optional<Quantity> height,
    @Key(about = "How it bends", example = "swept") Optional<BendKind> bend,
    @Key(about = "What covers its end in the room, beside the fan itself", example = "none")
        Optional<DuctTerminal> grille,
    @Key(about = "What covers its end outside", example = "wall grille")
        Optional<DuctTerminal> cowl,
    @Key(about = "Whether a shutter in it stops air from blowing back", example = "yes")
        Optional<YesNo> backdraughtShutter) {}
