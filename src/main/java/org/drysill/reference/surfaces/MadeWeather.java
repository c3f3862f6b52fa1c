package org.drysill.reference.surfaces;

import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * How hours are made from months.
 *
 * @param winterSwing half of the daily range in the coldest month [K]
 * @param summerSwing the same in the warmest month [K]
 * @param winterSpread standard deviation of daily means in the coldest month [K]
 * @param summerSpread the same in the warmest month [K]
 * @param persistence correlation of the departure of one day with the next
 * @param seed of the departures
 */
public record MadeWeather(
    @Key(about = "Half of the daily range in the coldest month, K") Sourced winterSwing,
    @Key(about = "Half of the daily range in the warmest month, K") Sourced summerSwing,
    @Key(about = "Standard deviation of daily means in the coldest month, K") Sourced winterSpread,
    @Key(about = "Standard deviation of daily means in the warmest month, K") Sourced summerSpread,
    @Key(about = "Correlation of the departure of one day with the next") Sourced persistence,
    @Key(about = "Seed of the departures") Sourced seed) {}
