package org.drysill.assess.humidity;

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
 * What a reading is worth: the bounds written beside it, else the accuracy of its instrument, else
 * an assumed accuracy, which is noted.
 */
public final class Accuracies {
  private final Survey survey;
  private final Accuracy assumed;
  private final Map<String, Assumption> noted = new LinkedHashMap<>();

  /** For the readings of a survey. */
  public Accuracies(Survey survey, Accuracy assumed) {
    this.survey = survey;
    this.assumed = assumed;
  }

  /** Bounds of an air temperature [°C]. */
  public Range temperature(Quantity read, Optional<String> instrument) {
    return around(
        read, instrument, "temperature", Instrument::temperatureAccuracy, assumed.temperature());
  }

  /** Bounds of a relative humidity, as ratio. */
  public Range humidity(Quantity read, Optional<String> instrument) {
    return around(read, instrument, "humidity", Instrument::humidityAccuracy, assumed.humidity());
  }

  /** Bounds of a concentration of CO₂ [ppm]. */
  public Range co2(Quantity read, Optional<String> instrument) {
    return around(read, instrument, "CO2", Instrument::co2Accuracy, assumed.co2());
  }

  /** Bounds of the temperature of a surface [°C]. */
  public Range surface(Quantity read, Optional<String> instrument) {
    return around(
        read,
        instrument,
        "surface temperature",
        Instrument::temperatureAccuracy,
        assumed.surface());
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
      Quantity otherwise) {
    if (read.isRange()) {
      return read.range();
    }
    Optional<Quantity> accuracy = instrument.flatMap(this::find).flatMap(stated);
    if (accuracy.isEmpty()) {
      note(instrument, what, otherwise);
    }
    return Range.around(read.value(), accuracy.orElse(otherwise).value());
  }

  private Optional<Instrument> find(String id) {
    return survey.visit().instruments().stream().filter(i -> i.id().equals(id)).findFirst();
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
                "State the accuracy of the instrument under visit.instruments, and name the"
                    + " instrument at each reading.",
                assumed.source()));
  }
}
