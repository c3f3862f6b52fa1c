package org.drysill.assess.recovery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.physics.Range;
import org.drysill.survey.HeatRecoveryTest;
import org.drysill.yaml.Quantity;

/**
 * The temperatures of a test with their errors [°C].
 *
 * @param indoor room air; the air that the unit takes from the room where the survey lacks it
 * @param outdoor outdoor air
 * @param supply air blown into the room
 * @param extract air taken from the room; room air where the survey lacks it
 * @param exhaust air blown outside
 */
record TestTemperatures(
    Optional<Range> indoor,
    Optional<Range> outdoor,
    Optional<Range> supply,
    Optional<Range> extract,
    Optional<Range> exhaust) {

  /** The temperatures of a test. */
  static TestTemperatures of(HeatRecoveryTest test, InstrumentErrors errors) {
    return new TestTemperatures(
        range(test.indoor().or(test::extract), test, errors),
        range(test.outdoor(), test, errors),
        range(test.supply(), test, errors),
        range(test.extract().or(test::indoor), test, errors),
        range(test.exhaust(), test, errors));
  }

  private static Optional<Range> range(
      Optional<Quantity> read, HeatRecoveryTest test, InstrumentErrors errors) {
    return read.map(q -> errors.temperature(q, test.instrument()));
  }

  /** What a ratio on either side would need and the survey lacks, in words. */
  List<String> missing() {
    List<String> missing = new ArrayList<>();
    if (indoor.isEmpty()) {
      missing.add("indoor");
    }
    if (outdoor.isEmpty()) {
      missing.add("outdoor");
    }
    if (supply.isEmpty() && exhaust.isEmpty()) {
      missing.add("supply");
    }
    return missing;
  }
}
