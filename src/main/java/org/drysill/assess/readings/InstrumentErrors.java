package org.drysill.assess.readings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.drysill.assess.Assumption;
import org.drysill.physics.Range;
import org.drysill.reference.readings.Accuracy;
import org.drysill.survey.Instrument;
import org.drysill.survey.Survey;
import org.drysill.yaml.Quantity;

/**
 * What the readings of a visit are worth: the error written beside the reading, else the accuracy
 * of its instrument, else an assumed accuracy, which is noted.
 */
public final class InstrumentErrors {
  private final List<Instrument> instruments;
  private final Accuracy assumed;
  private final Map<String, Assumption> noted = new LinkedHashMap<>();

  /** For the readings of a survey; {@code assumed} counts where nobody states an accuracy. */
  public InstrumentErrors(Survey survey, Accuracy assumed) {
    this(survey.visit().instruments(), assumed);
  }

  InstrumentErrors(List<Instrument> instruments, Accuracy assumed) {
    this.instruments = List.copyOf(instruments);
    this.assumed = assumed;
  }

  /** Bounds of the temperature of air [°C]. */
  public Range temperature(Quantity read, Optional<String> instrument) {
    return around(
        read, instrument, "temperature", Instrument::temperatureAccuracy, assumed.temperature(), 1);
  }

  /** Bounds of the temperature of a surface [°C]. */
  public Range surface(Quantity read, Optional<String> instrument) {
    return around(
        read,
        instrument,
        "surface temperature",
        Instrument::temperatureAccuracy,
        assumed.surface(),
        1);
  }

  /** Bounds of a relative humidity, as a ratio within 0 and 1. */
  public Range humidity(Quantity read, Optional<String> instrument) {
    Range range =
        around(read, instrument, "humidity", Instrument::humidityAccuracy, assumed.humidity(), 1);
    return new Range(within(range.low()), within(range.likely()), within(range.high()));
  }

  /** Bounds of a concentration of CO₂ [ppm]. */
  public Range co2(Quantity read, Optional<String> instrument) {
    return around(read, instrument, "CO2", Instrument::co2Accuracy, assumed.co2(), 1);
  }

  /** Bounds of a flow [m³/s]; its accuracy is a share of the reading. */
  public Range flow(Quantity read, Optional<String> instrument) {
    return around(read, instrument, "flow", Instrument::flowAccuracy, assumed.flow(), read.value());
  }

  /** What had to be assumed so far. */
  public List<Assumption> assumptions() {
    return new ArrayList<>(noted.values());
  }

  private Range around(
      Quantity read,
      Optional<String> instrument,
      String what,
      Function<Instrument, Optional<Quantity>> stated,
      Quantity otherwise,
      double scale) {
    if (read.isRange()) {
      return read.range();
    }
    Optional<Quantity> accuracy = instrument.flatMap(this::find).flatMap(stated);
    if (accuracy.isEmpty()) {
      note(instrument, what, otherwise);
    }
    return Range.around(read.value(), accuracy.orElse(otherwise).value() * scale);
  }

  private Optional<Instrument> find(String id) {
    return instruments.stream().filter(i -> i.id().equals(id)).findFirst();
  }

  private void note(Optional<String> instrument, String what, Quantity accuracy) {
    String id =
        "instrument." + instrument.orElse("unnamed") + "." + what.replace(' ', '_') + "_accuracy";
    noted.computeIfAbsent(
        id,
        key ->
            new Assumption(
                key,
                "Accuracy of " + what + " of " + instrument.orElse("an instrument not named"),
                "plus or minus " + accuracy.written(),
                "neither the reading nor its instrument states one",
                "List the instrument with its accuracy, and name it at each reading.",
                assumed.source()));
  }

  private static double within(double ratio) {
    return Math.min(1, Math.max(0, ratio));
  }
}
