package org.drysill.survey;

import java.util.Optional;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * The part of a window that opens.
 *
 * @param kind how it opens
 * @param width clear width
 * @param height clear height
 * @param angle how far it opens
 */
public record Opening(
    @Key(about = "How it opens", example = "side-hung") OpeningKind kind,
    @Key(
            about = "Clear width",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            max = 20000,
            example = "550 mm")
        Optional<Quantity> width,
    @Key(
            about = "Clear height",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            max = 20000,
            example = "1000 mm")
        Optional<Quantity> height,
    @Key(
            about = "How far it opens",
            dimension = Dimension.ANGLE,
            unit = "deg",
            min = 0,
            max = 180,
            example = "30 deg")
        Optional<Quantity> angle) {}
