package org.drysill.survey;

import java.util.Optional;
import org.drysill.survey.share.LeftOut;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * Something that puts water into the air, people aside.
 *
 * @param kind what it is, an entry of the moisture table
 * @param fuel fuel of a cooker or heater
 * @param lidsAndHood lids on pans and a hood in use
 * @param loadsPerWeek loads of washing a week
 * @param timesPerWeek times a week
 * @param hoursPerDay hours a day
 * @param count how many
 * @param power power of a heater
 * @param rate water given off, instead of the table
 * @param note what else
 */
public record MoistureSource(
    @Key(
            about = "What it is, an entry of the moisture table",
            example = "cooking",
            vocabulary = "moisture source")
        String kind,
    @Key(about = "Fuel of a cooker or heater", example = "gas") Optional<Fuel> fuel,
    @Key(about = "Lids on pans and a hood in use", example = "no") Optional<YesNo> lidsAndHood,
    @Key(
            about = "Loads of washing a week",
            dimension = Dimension.NUMBER,
            min = 0,
            max = 100,
            high = 20,
            example = "4")
        Optional<Quantity> loadsPerWeek,
    @Key(
            about = "Times a week",
            dimension = Dimension.NUMBER,
            min = 0,
            max = 500,
            high = 60,
            example = "14")
        Optional<Quantity> timesPerWeek,
    @Key(
            about = "Hours a day",
            dimension = Dimension.HOURS_PER_DAY,
            unit = "h",
            min = 0,
            max = 24,
            example = "3 h")
        Optional<Quantity> hoursPerDay,
    @Key(about = "How many", dimension = Dimension.NUMBER, min = 0, max = 1000, example = "6")
        Optional<Quantity> count,
    @Key(
            about = "Power of a heater",
            dimension = Dimension.POWER,
            unit = "W",
            min = 0,
            max = 50000,
            example = "2 kW")
        Optional<Quantity> power,
    @Key(
            about = "Water given off, instead of the table",
            dimension = Dimension.MASS_RATE,
            unit = "kg/day",
            min = 0,
            max = 200,
            high = 30,
            example = "0.4 kg/day")
        Optional<Quantity> rate,
    @LeftOut @Key(about = "What else", example = "fish tank") Optional<String> note) {}
