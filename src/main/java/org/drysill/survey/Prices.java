package org.drysill.survey;

import java.time.LocalDate;
import java.util.Optional;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * Prices for the money figures.
 *
 * @param currency currency code
 * @param electricity price of electricity
 * @param heat price of the fuel or energy that heats
 * @param discountRate real discount rate
 * @param horizon over how many years money is counted
 * @param date the date of the tariff
 */
public record Prices(
    @Key(about = "Currency code", example = "GBP") Optional<String> currency,
    @Key(
            about = "Price of electricity",
            dimension = Dimension.ENERGY_PRICE,
            unit = "/kWh",
            min = 0,
            high = 2,
            example = "0.27 /kWh")
        Optional<Quantity> electricity,
    @Key(
            about = "Price of the fuel or energy that heats",
            dimension = Dimension.ENERGY_PRICE,
            unit = "/kWh",
            min = 0,
            high = 2,
            example = "0.07 /kWh")
        Optional<Quantity> heat,
    @Key(
            about = "Real discount rate",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = -5,
            max = 30,
            low = 0,
            high = 10,
            example = "3.5 %")
        Optional<Quantity> discountRate,
    @Key(
            about = "Over how many years money is counted",
            dimension = Dimension.YEARS,
            unit = "y",
            min = 1,
            max = 100,
            low = 5,
            high = 60,
            example = "20 y")
        Optional<Quantity> horizon,
    @Key(about = "The date of the tariff", example = "2026-01-01") Optional<LocalDate> date) {}
