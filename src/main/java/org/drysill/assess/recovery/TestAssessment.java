package org.drysill.assess.recovery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.assess.recovery.cycle.CycleAssessment;
import org.drysill.assess.recovery.cycle.LoggedCycles;
import org.drysill.physics.Range;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.survey.FanKind;
import org.drysill.survey.HeatRecoveryTest;
import org.drysill.survey.YesNo;
import org.drysill.survey.log.Logs;

/** Turns the temperatures of a test into ratios on both sides, with the instruments' errors. */
final class TestAssessment {
  private final InstrumentErrors errors;
  private final RecoveryDefaults defaults;
  private final Logs logs;
  private final CycleAssessment cycles;
  private final List<Assumption> assumptions = new ArrayList<>();

  TestAssessment(InstrumentErrors errors, RecoveryDefaults defaults, Logs logs) {
    this.errors = errors;
    this.defaults = defaults;
    this.logs = logs;
    this.cycles = new CycleAssessment(errors, defaults);
  }

  /** What was taken for granted of logs so far. */
  List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }

  RecoveryTest of(String id, FanKind kind, HeatRecoveryTest test) {
    if (test.log().isEmpty()) {
      return byReadings(id, kind, test, List.of());
    }
    RecoveryTest logged = new LoggedTest(defaults, test).of(logged(id, kind, test));
    boolean useless = logged.supplyRatio().isEmpty();
    return useless && TestTemperatures.of(test, errors).missing().isEmpty()
        ? byReadings(id, kind, test, List.of("Of its log: " + logged.why()))
        : logged;
  }

  private LoggedCycles logged(String id, FanKind kind, HeatRecoveryTest test) {
    if (kind != FanKind.ALTERNATING_HEAT_RECOVERY) {
      return LoggedCycles.refused(
          Optional.empty(),
          "Refused: it does not blow both ways in turn, so that its log has no cycle; note the"
              + " means of the log as temperatures.");
    }
    LoggedCycles logged = cycles.of(id, test, test.log().flatMap(logs::cycles));
    assumptions.addAll(logged.assumptions());
    return logged;
  }

  private RecoveryTest byReadings(
      String id, FanKind kind, HeatRecoveryTest test, List<String> warnings) {
    TestTemperatures t = TestTemperatures.of(test, errors);
    boolean single = isSingleReading(kind, test);
    TestForm form = single ? TestForm.SINGLE_READING : TestForm.MEANS;
    if (!t.missing().isEmpty()) {
      return refused(
          test,
          form,
          Optional.empty(),
          "Refused: no " + String.join(" and no ", t.missing()) + " temperature was noted.");
    }
    RatioFigures figures = new RatioFigures(id, t, defaults);
    double difference = t.indoor().orElseThrow().likely() - t.outdoor().orElseThrow().likely();
    Optional<Figure> shown = Optional.of(figures.difference());
    if (difference < defaults.refusedBelow().likely()) {
      return refused(
          test,
          form,
          shown,
          "Refused: indoors was only %s K warmer than outdoors; below %s K the test says nothing."
              .formatted(
                  Numbers.number(difference), Numbers.number(defaults.refusedBelow().likely())));
    }
    Optional<String> objection = objection(t);
    if (objection.isPresent()) {
      return refused(test, form, shown, objection.get());
    }
    boolean indicative = difference < defaults.indicativeBelow().likely();
    List<String> all = new ArrayList<>(warnings);
    if (single) {
      all.add(singleReading());
    }
    return new RecoveryTest(
        test.at(),
        form,
        shown,
        indicative ? TestQuality.INDICATIVE : TestQuality.NORMAL,
        t.supply().map(s -> figures.supply(s, single)),
        t.exhaust().map(figures::exhaust),
        Optional.empty(),
        why(indicative, difference),
        all);
  }

  private String why(boolean indicative, double difference) {
    return indicative
        ? "Indicative only: indoors was %s K warmer than outdoors; from %s K up a test counts fully, the laboratory takes %s K."
            .formatted(
                Numbers.number(difference),
                Numbers.number(defaults.indicativeBelow().likely()),
                Numbers.number(defaults.laboratoryDifference().likely()))
        : "Indoors was %s K warmer than outdoors; the laboratory takes %s K."
            .formatted(
                Numbers.number(difference),
                Numbers.number(defaults.laboratoryDifference().likely()));
  }

  private static Optional<String> objection(TestTemperatures t) {
    Range indoor = t.indoor().orElseThrow();
    Range outdoor = t.outdoor().orElseThrow();
    return t.supply()
        .flatMap(
            s -> {
              if (s.likely() > indoor.likely()) {
                return Optional.of(
                    "Refused: the supply air was warmer than the room, which no unit does"
                        + " without a heater.");
              }
              return s.likely() < outdoor.likely()
                  ? Optional.of("Refused: the supply air was colder than outdoors.")
                  : Optional.empty();
            });
  }

  /** A single reading of a unit whose supply air cools through each phase. */
  private static boolean isSingleReading(FanKind kind, HeatRecoveryTest test) {
    return kind == FanKind.ALTERNATING_HEAT_RECOVERY
        && test.wholeCycle().filter(w -> w == YesNo.YES).isEmpty();
  }

  private String singleReading() {
    return "The survey does not say that the temperatures are averages over whole cycles. A reading"
        + " at the start of supply reads high: the mean may be only %s of it, and the lower"
            .formatted(Numbers.percent(defaults.singleReadingShare().likely()))
        + " bound allows for that.";
  }

  private static RecoveryTest refused(
      HeatRecoveryTest test, TestForm form, Optional<Figure> difference, String why) {
    return new RecoveryTest(
        test.at(),
        form,
        difference,
        TestQuality.REFUSED,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        why,
        List.of());
  }
}
