package org.drysill.reference.readings;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * What stands in for outdoor air that was not read.
 *
 * @param dayTemperatureSpread how far a day may stand from its month, plus or minus [K]
 * @param dayVapourSpread the same for vapour pressure, as a share
 * @param source where the values come from
 */
public record OutdoorRules(
    @Key(
            about = "How far the temperature of a day may stand from that of its month",
            dimension = Dimension.TEMPERATURE_DIFFERENCE,
            unit = "K",
            min = 0)
        Quantity dayTemperatureSpread,
    @Key(
            about = "How far the vapour pressure of a day may stand from that of its month",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 0,
            max = 99)
        Quantity dayVapourSpread,
    @Key(about = "Where the values come from") Citation source) {}
