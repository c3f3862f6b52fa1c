package org.drysill.assess.readings;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.drysill.physics.Range;
import org.drysill.survey.Instrument;
import org.drysill.yaml.Quantity;

/**
 * Readings with their errors: the error written beside the reading, else the accuracy of its
 * instrument, else an assumed one.
 *
 * @param instruments the instruments of the visit
 */
public record InstrumentErrors(List<Instrument> instruments) {
  /** Copies the list. */
  public InstrumentErrors {
    instruments = List.copyOf(instruments);
  }

  /**
   * A temperature with its error [°C].
   *
   * @param read the reading
   * @param instrument the id of the instrument
   * @param assumed plus or minus [K], where neither says it
   */
  public Range temperature(Quantity read, Optional<String> instrument, double assumed) {
    return withError(read, accuracy(instrument, Instrument::temperatureAccuracy), assumed);
  }

  /**
   * A relative humidity with its error, as a ratio within 0 and 1.
   *
   * @param read the reading
   * @param instrument the id of the instrument
   * @param assumed plus or minus, as a ratio, where neither says it
   */
  public Range humidity(Quantity read, Optional<String> instrument, double assumed) {
    Range range = withError(read, accuracy(instrument, Instrument::humidityAccuracy), assumed);
    return new Range(within(range.low()), within(range.likely()), within(range.high()));
  }

  /**
   * A flow with its error [m³/s].
   *
   * @param read the reading
   * @param instrument the id of the instrument
   * @param assumed plus or minus, as a share of the reading, where neither says it
   */
  public Range flow(Quantity read, Optional<String> instrument, double assumed) {
    double share = accuracy(instrument, Instrument::flowAccuracy).orElse(assumed);
    return withError(read, Optional.of(share * read.value()), assumed);
  }

  private Optional<Double> accuracy(
      Optional<String> id, Function<Instrument, Optional<Quantity>> which) {
    return id.flatMap(wanted -> instruments.stream().filter(i -> i.id().equals(wanted)).findFirst())
        .flatMap(which)
        .map(Quantity::value);
  }

  private static Range withError(Quantity read, Optional<Double> accuracy, double assumed) {
    return read.isRange() ? read.range() : Range.around(read.value(), accuracy.orElse(assumed));
  }

  private static double within(double ratio) {
    return Math.min(1, Math.max(0, ratio));
  }
}
