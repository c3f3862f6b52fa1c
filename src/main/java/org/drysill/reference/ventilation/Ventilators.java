package org.drysill.reference.ventilation;

import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * How background ventilators are counted.
 *
 * @param discharge discharge coefficient that goes with equivalent areas
 * @param testPressure pressure difference of the definition of equivalent area
 * @param airDensity density of air, kg/m3
 * @param notLookedAt equivalent area at a window where nobody has looked for one
 * @param source where it comes from
 * @param note what the reader should know about it
 */
public record Ventilators(
    @Key(
            about = "Discharge coefficient that goes with equivalent areas",
            min = 0.01,
            max = 1,
            example = "0.61")
        double discharge,
    @Key(
            about = "Pressure difference of the definition of equivalent area",
            dimension = Dimension.PRESSURE,
            unit = "Pa",
            min = 0.01,
            example = "1 Pa")
        Quantity testPressure,
    @Key(about = "Density of air, kg/m3", min = 1, max = 1.4, example = "1.2") double airDensity,
    @Key(
            about = "Equivalent area at a window where nobody has looked for one",
            dimension = Dimension.AREA,
            unit = "mm2",
            min = 0,
            example = "0..4000 mm2")
        Quantity notLookedAt,
    @Key(about = "Where it comes from") Citation source,
    @Key(about = "What the reader should know about it") Optional<String> note) {}
