package org.drysill.reference.ventilation;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * How the pressure across closed internal doors is reckoned and from where it is too much.
 *
 * @param limit the most that is not flagged
 * @param discharge discharge coefficient of the gaps
 * @param cracks free area around a leaf beside the gap under it
 * @param undercut gap under a door where nobody measured it
 * @param source where they come from
 */
public record DoorPressureLimit(
    @Key(
            about = "The most that is not flagged",
            dimension = Dimension.PRESSURE,
            unit = "Pa",
            min = 0.1,
            example = "10 Pa")
        Quantity limit,
    @Key(about = "Discharge coefficient of the gaps", min = 0.1, max = 1, example = "0.61")
        double discharge,
    @Key(
            about = "Free area around a leaf beside the gap under it",
            dimension = Dimension.AREA,
            unit = "mm2",
            min = 1,
            example = "200..2000 mm2")
        Quantity cracks,
    @Key(
            about = "Gap under a door where nobody measured it",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            example = "2..10 mm")
        Quantity undercut,
    @Key(about = "Where they come from") Citation source) {}
