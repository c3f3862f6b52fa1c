package org.drysill.options;

import org.drysill.physics.Range;

/**
 * How sure what a package achieves and costs is, over samples of all that is not known.
 *
 * @param enough chance of enough air and of no month at risk of mould on walls and corners
 * @param air chance of the air that is asked
 * @param walls chance of no month at risk of mould on walls and corners
 * @param dryGlass chance of all that and of no month with wet glass
 * @param first chance that it ranks first among the packages that were looked at so
 * @param annualCost yearly cost over the horizon: 5 %, median, 95 % [currency/a]
 * @param hourly the same hour by hour
 */
public record PackageSpread(
    Chance enough,
    Chance air,
    Chance walls,
    Chance dryGlass,
    Chance first,
    Range annualCost,
    HourlySpread hourly) {}
