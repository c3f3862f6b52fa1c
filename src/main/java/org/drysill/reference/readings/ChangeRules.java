package org.drysill.reference.readings;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * When a change between two visits counts as shown.
 *
 * @param alikeWithin outdoor temperatures up to this far apart are alike [K]
 * @param vapourWithin outdoor vapour pressures up to this far apart are alike [Pa]
 * @param warmestOutdoors above this outdoor temperature a home is not heated [°C]
 * @param source where the limits of temperature come from
 * @param vapourSource where the limit of vapour comes from
 * @param log when a log counts as a spell
 * @param referenceAir outdoor air at which cold places are compared
 * @param mouldAreaError error of an area of mould, as a share of it
 * @param mouldSource where that error comes from
 */
public record ChangeRules(
    @Key(
            about = "Outdoor temperatures up to this far apart are alike",
            dimension = Dimension.TEMPERATURE_DIFFERENCE,
            unit = "K",
            min = 0)
        Quantity alikeWithin,
    @Key(
            about = "Outdoor vapour pressures up to this far apart are alike",
            dimension = Dimension.PRESSURE,
            unit = "Pa",
            min = 0)
        Quantity vapourWithin,
    @Key(
            about = "Above this outdoor temperature a home is not heated",
            dimension = Dimension.TEMPERATURE,
            unit = "C")
        Quantity warmestOutdoors,
    @Key(about = "Where the limits of temperature come from") Citation source,
    @Key(about = "Where the limit of vapour comes from") Citation vapourSource,
    @Key(about = "When a log counts as a spell") LogSpellRules log,
    @Key(about = "Outdoor air at which cold places are compared") ReferenceAir referenceAir,
    @Key(
            about = "Error of an area of mould, as a share of it",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 0)
        Quantity mouldAreaError,
    @Key(about = "Where that error comes from") Citation mouldSource) {}
