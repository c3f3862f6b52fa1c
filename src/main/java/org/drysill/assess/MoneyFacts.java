package org.drysill.assess;

/**
 * Prices and the horizon over which money is counted.
 *
 * @param currency currency code, such as {@code GBP}
 * @param electricity price of electricity [currency/kWh]
 * @param heat price of the energy that heats [currency/kWh]
 * @param heatingEfficiency useful heat out per energy in [1]; above 1 for a heat pump
 * @param discountRate real discount rate [1]
 * @param horizon years over which money is counted [a]
 */
public record MoneyFacts(
    String currency,
    Figure electricity,
    Figure heat,
    Figure heatingEfficiency,
    Figure discountRate,
    Figure horizon) {}
