package org.drysill.survey;

import java.util.Optional;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * Air leakage of the envelope.
 *
 * @param n50 air changes at 50 Pa
 * @param airPermeability leakage per area of envelope at 50 Pa
 * @param basis measured or assumed
 * @param weatherFactor weather and shielding factor of the nearest weather station, which a North
 *     American standard tabulates
 */
public record Airtightness(
    @Key(
            about = "Air changes at 50 Pa",
            dimension = Dimension.AIR_CHANGE,
            unit = "/h",
            min = 0.05,
            max = 60,
            low = 0.3,
            high = 30,
            example = "9 /h")
        Optional<Quantity> n50,
    @Key(
            about = "Leakage per area of envelope at 50 Pa",
            dimension = Dimension.AIR_PERMEABILITY,
            unit = "m3/(h.m2)",
            min = 0.05,
            max = 60,
            low = 0.3,
            high = 30,
            example = "8 m3/(h.m2)")
        Optional<Quantity> airPermeability,
    @Key(about = "Measured or assumed", example = "assumed") Optional<Basis> basis,
    @Key(
            about =
                "Weather and shielding factor of the nearest weather station, for rule sets that"
                    + " credit leaks by it",
            min = 0.1,
            max = 2,
            low = 0.3,
            high = 0.9,
            example = "0.5")
        Optional<Quantity> weatherFactor) {}
