package org.drysill.options.packs;

import org.drysill.options.money.AirBill;

/**
 * What measures cost and take, likely.
 *
 * @param first first cost [currency]
 * @param annual yearly cost over the horizon [currency/a]
 * @param running yearly cost of energy and upkeep [currency/a]
 * @param heatKwh energy for heat, less what is saved [kWh/a]
 * @param electricityKwh electricity [kWh/a]
 * @param co2Kg carbon dioxide of both [kg/a]
 */
record Bill(
    double first,
    double annual,
    double running,
    double heatKwh,
    double electricityKwh,
    double co2Kg) {
  static final Bill NONE = new Bill(0, 0, 0, 0, 0, 0);

  Bill and(Bill other) {
    return new Bill(
        first + other.first,
        annual + other.annual,
        running + other.running,
        heatKwh + other.heatKwh,
        electricityKwh + other.electricityKwh,
        co2Kg + other.co2Kg);
  }

  /** The same with another flow of outdoor air to be warmed [m³/s]; less where negative. */
  Bill warming(double flow, AirBill air) {
    double cost = flow * air.cost();
    return new Bill(
        first,
        annual + cost,
        running + cost,
        heatKwh + flow * air.heatKwh(),
        electricityKwh,
        co2Kg + flow * air.co2Kg());
  }
}
