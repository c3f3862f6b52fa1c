package org.drysill.assess.recovery.cycle;

import java.util.Arrays;
import java.util.Optional;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.physics.Range;
import org.drysill.physics.recovery.cycle.CycleRules;
import org.drysill.reference.recovery.CycleCriteria;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.survey.HeatRecoveryTest;
import org.drysill.survey.log.CycleLog;
import org.drysill.survey.log.CycleSamples;
import org.drysill.survey.log.LogQuantity;
import org.drysill.yaml.Quantity;

/** Evaluates the log of a test. */
public final class CycleAssessment {
  private final InstrumentErrors errors;
  private final RecoveryDefaults defaults;
  private final CycleRules rules;

  /** With the errors of instruments and what is taken for granted. */
  public CycleAssessment(InstrumentErrors errors, RecoveryDefaults defaults) {
    this.errors = errors;
    this.defaults = defaults;
    this.rules = rules(defaults.cycles());
  }

  private static CycleRules rules(CycleCriteria c) {
    return new CycleRules(
        c.halfCycle().range().low(),
        c.halfCycle().range().high(),
        c.leastSwing().likely(),
        c.swingOverNoise().likely(),
        c.leastSamples().likely(),
        (int) c.fewestCycles().likely(),
        c.uneven().likely(),
        c.unequal().likely());
  }

  /**
   * What the log says.
   *
   * @param id the id of the test
   * @param test the test; its readings stand in for columns that the log lacks
   * @param log its log; empty where it was not read
   */
  public LoggedCycles of(String id, HeatRecoveryTest test, Optional<CycleLog> log) {
    return log.flatMap(CycleLog::samples)
        .map(samples -> of(id, test, samples))
        .orElseGet(
            () ->
                LoggedCycles.refused(
                    Optional.empty(), "Refused: its log of cycles could not be read."));
  }

  private LoggedCycles of(String id, HeatRecoveryTest test, CycleSamples samples) {
    Optional<AirBefore> indoor =
        ends(samples, LogQuantity.INDOOR_TEMPERATURE, test.indoor().or(test::extract), test);
    Optional<AirBefore> outdoor =
        ends(samples, LogQuantity.OUTDOOR_TEMPERATURE, test.outdoor(), test);
    if (indoor.isEmpty() || outdoor.isEmpty()) {
      return LoggedCycles.refused(
          Optional.empty(),
          "Refused: its log has no temperature %s, and none was noted beside it."
              .formatted(indoor.isEmpty() ? "of the room" : "outdoors"));
    }
    double error =
        halfWidth(errors.temperature(exactly(outdoor.get().mean().likely()), test.instrument()));
    return new CycleEvaluation(defaults, rules, id, samples, error, indoor.get(), outdoor.get())
        .evaluate();
  }

  private Optional<AirBefore> ends(
      CycleSamples samples, LogQuantity quantity, Optional<Quantity> noted, HeatRecoveryTest test) {
    return LoggedFace.filled(samples, quantity)
        .map(column -> new AirBefore(column, mean(column, test), true))
        .or(() -> noted.map(q -> new AirBefore(constant(q, samples), noted(q, test), false)));
  }

  private static double[] constant(Quantity noted, CycleSamples samples) {
    double[] constant = new double[samples.size()];
    Arrays.fill(constant, noted.value());
    return constant;
  }

  private Range noted(Quantity noted, HeatRecoveryTest test) {
    return errors.temperature(noted, test.instrument());
  }

  private Range mean(double[] celsius, HeatRecoveryTest test) {
    double mean = Arrays.stream(celsius).average().orElseThrow();
    return errors.temperature(exactly(mean), test.instrument());
  }

  private static Quantity exactly(double celsius) {
    return new Quantity(celsius, celsius, celsius, "");
  }

  private static double halfWidth(Range bounds) {
    return (bounds.high() - bounds.low()) / 2;
  }
}
