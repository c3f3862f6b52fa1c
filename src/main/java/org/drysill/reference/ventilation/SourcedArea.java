package org.drysill.reference.ventilation;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * An area with its source.
 *
 * @param value the area
 * @param source where it comes from
 */
public record SourcedArea(
    @Key(
            about = "The area",
            dimension = Dimension.AREA,
            unit = "mm2",
            min = 0,
            example = "3000..9000 mm2")
        Quantity value,
    @Key(about = "Where it comes from") Citation source) {}
