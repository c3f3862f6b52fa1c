package org.drysill.survey;

import java.util.Optional;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * The main heating.
 *
 * @param fuel what it burns
 * @param efficiency heat out per energy in; above 100 % for a heat pump
 * @param setpoint usual indoor temperature in the heating season
 */
public record Heating(
    @Key(about = "What it burns", example = "mains gas") Optional<Fuel> fuel,
    @Key(
            about = "Heat out per energy in; above 100 % for a heat pump",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 5,
            max = 700,
            low = 40,
            high = 500,
            example = "85 %")
        Optional<Quantity> efficiency,
    @Key(
            about = "Usual indoor temperature in the heating season",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = 5,
            max = 35,
            low = 14,
            high = 26,
            example = "19 C")
        Optional<Quantity> setpoint) {}
