package org.drysill.assess.logs;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.physics.Range;
import org.drysill.yaml.Quantity;

/**
 * The error of means of a log: the accuracy of its instrument, whole. It is mostly an offset that
 * all readings share, so that their number does not make it smaller.
 */
final class LogErrors {
  private final InstrumentErrors errors;

  LogErrors(InstrumentErrors errors) {
    this.errors = errors;
  }

  Range temperature(double celsius, Optional<String> instrument) {
    return errors.temperature(read(celsius), instrument);
  }

  Range humidity(double ratio, Optional<String> instrument) {
    return errors.humidity(read(ratio), instrument);
  }

  Range co2(double ppm, Optional<String> instrument) {
    return errors.co2(read(ppm), instrument);
  }

  List<Assumption> assumptions() {
    return errors.assumptions();
  }

  private static Quantity read(double value) {
    return new Quantity(value, value, value, "");
  }
}
