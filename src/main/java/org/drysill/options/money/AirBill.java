package org.drysill.options.money;

/**
 * What a flow of outdoor air takes in a year, for each m³/s.
 *
 * @param heatKwh energy for heat [kWh/a per m³/s]
 * @param cost what it costs [currency/a per m³/s]
 * @param co2Kg its carbon dioxide [kg/a per m³/s]
 */
public record AirBill(double heatKwh, double cost, double co2Kg) {}
