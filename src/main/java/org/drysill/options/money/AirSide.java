package org.drysill.options.money;

import org.drysill.assess.Figure;
import org.drysill.assess.MoneyFacts;
import org.drysill.physics.Range;
import org.drysill.physics.energy.GlobalCost;
import org.drysill.reference.measures.Measure;

/**
 * One of two measures that move the same air.
 *
 * @param measure the measure
 * @param first first cost [currency]
 * @param heat energy for the air [kWh/a]
 * @param electricity electricity [kWh/a]
 * @param upkeep upkeep in a year [currency/a]
 * @param annual yearly cost over the horizon [currency/a]
 */
record AirSide(
    Measure measure, Figure first, Figure heat, Figure electricity, Range upkeep, Figure annual) {
  /**
   * First cost and replacements as equal yearly payments, CI·A [currency/a], each end of the first
   * cost by itself. At a rate below 0 what outlasts the horizon may be worth more then than it
   * cost.
   */
  Range payments(MoneyFacts money) {
    return first
        .value()
        .times(
            new GlobalCost(
                    1, measure.lifeYears(), money.horizon().likely(), money.discountRate().likely())
                .perYear(0));
  }
}
