package org.drysill.survey;

import java.time.LocalDate;
import java.util.Optional;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * An instrument, with the accuracy that its maker states.
 *
 * @param id short name that readings refer to
 * @param kind what it measures
 * @param calibrated date of the last calibration
 * @param temperatureAccuracy accuracy of temperature, plus or minus
 * @param humidityAccuracy accuracy of relative humidity in percentage points, plus or minus
 * @param flowAccuracy accuracy of flow in percent of the reading, plus or minus
 * @param co2Accuracy accuracy of CO2, plus or minus
 */
public record Instrument(
    @Renamed(Renamed.As.INSTRUMENT)
        @Key(about = "Short name that readings refer to", example = "th1")
        String id,
    @Key(about = "What it measures", example = "thermo-hygrometer") InstrumentKind kind,
    @Key(about = "Date of the last calibration", example = "2025-10-01")
        Optional<LocalDate> calibrated,
    @Key(
            about = "Accuracy of temperature, plus or minus",
            dimension = Dimension.TEMPERATURE_DIFFERENCE,
            unit = "K",
            min = 0,
            max = 20,
            high = 5,
            example = "0.4 K")
        Optional<Quantity> temperatureAccuracy,
    @Key(
            about = "Accuracy of relative humidity in percentage points, plus or minus",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 0,
            max = 50,
            high = 10,
            example = "2.5 %")
        Optional<Quantity> humidityAccuracy,
    @Key(
            about = "Accuracy of flow in percent of the reading, plus or minus",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 0,
            max = 100,
            high = 30,
            example = "5 %")
        Optional<Quantity> flowAccuracy,
    @Key(
            about = "Accuracy of CO2, plus or minus",
            dimension = Dimension.CONCENTRATION,
            unit = "ppm",
            min = 0,
            example = "50 ppm")
        Optional<Quantity> co2Accuracy) {}
