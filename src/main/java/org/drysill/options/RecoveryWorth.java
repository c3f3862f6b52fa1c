package org.drysill.options;

import org.drysill.assess.Figure;

/**
 * What a heat-recovery unit that is there is worth beside the cheapest measure that would move the
 * same air without recovery, both bought today and run alike.
 *
 * @param measured true where a usable test in this home tells its recovery, false where it is the
 *     declared one, taken down for use
 * @param first first cost of such a unit [currency]
 * @param heatLost energy for its air after recovery [kWh/a]
 * @param heatKept energy that its recovery keeps in use [kWh/a]
 * @param electricity of its fans [kWh/a]
 * @param annual yearly cost over the horizon [currency/a]
 * @param other the id of the cheapest measure that moves the same air
 * @param otherName its name
 * @param here true where the other measure would be in the same room
 * @param otherFirst its first cost [currency]
 * @param otherHeatLost energy for the same air without recovery [kWh/a]
 * @param otherElectricity its electricity [kWh/a]
 * @param otherAnnual its yearly cost over the horizon [currency/a]
 * @param savesYearly what the unit saves in a year of running against it [currency/a]; below 0
 *     where it costs more
 * @param leftYearly the same after both are paid for, as equal yearly sums [currency/a]
 * @param leftOverHorizon the same over the whole horizon, in money of today [currency]
 * @param payback when the unit has paid for itself against it
 */
public record RecoveryWorth(
    boolean measured,
    Figure first,
    Figure heatLost,
    Figure heatKept,
    Figure electricity,
    Figure annual,
    String other,
    String otherName,
    boolean here,
    Figure otherFirst,
    Figure otherHeatLost,
    Figure otherElectricity,
    Figure otherAnnual,
    Figure savesYearly,
    Figure leftYearly,
    Figure leftOverHorizon,
    Payback payback) {}
