package org.drysill.reference.readings;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * Accuracy where neither the reading nor its instrument states one, plus or minus.
 *
 * @param temperature of air temperature [K]
 * @param humidity of relative humidity, in percentage points kept as ratio
 * @param co2 of CO₂ [ppm]
 * @param surface of surface temperature [K]
 * @param flow of air flow, as a share of the reading
 * @param source where the values come from
 */
public record Accuracy(
    @Key(
            about = "Of air temperature, plus or minus",
            dimension = Dimension.TEMPERATURE_DIFFERENCE,
            unit = "K",
            min = 0)
        Quantity temperature,
    @Key(
            about = "Of relative humidity in percentage points, plus or minus",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 0)
        Quantity humidity,
    @Key(
            about = "Of CO2, plus or minus",
            dimension = Dimension.CONCENTRATION,
            unit = "ppm",
            min = 0)
        Quantity co2,
    @Key(
            about = "Of surface temperature, plus or minus",
            dimension = Dimension.TEMPERATURE_DIFFERENCE,
            unit = "K",
            min = 0)
        Quantity surface,
    @Key(
            about = "Of air flow in percent of the reading, plus or minus",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 0)
        Quantity flow,
    @Key(about = "Where the values come from") Citation source) {}
