package org.drysill.assess.recovery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.physics.Range;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.survey.FanKind;
import org.drysill.survey.HeatRecoveryTest;
import org.drysill.survey.YesNo;

/** Turns the temperatures of a test into ratios on both sides, with the instruments' errors. */
final class TestAssessment {
  private final InstrumentErrors errors;
  private final RecoveryDefaults defaults;

  TestAssessment(InstrumentErrors errors, RecoveryDefaults defaults) {
    this.errors = errors;
    this.defaults = defaults;
  }

  RecoveryTest of(String id, FanKind kind, HeatRecoveryTest test) {
    TestTemperatures t = TestTemperatures.of(test, errors);
    if (test.log().isPresent() && !t.missing().isEmpty()) {
      return without(
          test,
          TestQuality.NOT_EVALUATED,
          "A log of cycles is named; this version does not evaluate it.");
    }
    if (!t.missing().isEmpty()) {
      return without(
          test,
          TestQuality.REFUSED,
          "Refused: no " + String.join(" and no ", t.missing()) + " temperature was noted.");
    }
    return judged(id, kind, test, t);
  }

  private RecoveryTest judged(String id, FanKind kind, HeatRecoveryTest test, TestTemperatures t) {
    RatioFigures figures = new RatioFigures(id, t, defaults);
    double difference = t.indoor().orElseThrow().likely() - t.outdoor().orElseThrow().likely();
    Optional<Figure> shown = Optional.of(figures.difference());
    if (difference < defaults.refusedBelow().likely()) {
      return new RecoveryTest(
          test.at(),
          shown,
          TestQuality.REFUSED,
          Optional.empty(),
          Optional.empty(),
          "Refused: indoors was only %s K warmer than outdoors; below %s K the test says nothing."
              .formatted(
                  Numbers.number(difference), Numbers.number(defaults.refusedBelow().likely())),
          List.of());
    }
    Optional<String> objection = objection(t);
    if (objection.isPresent()) {
      return new RecoveryTest(
          test.at(),
          shown,
          TestQuality.REFUSED,
          Optional.empty(),
          Optional.empty(),
          objection.get(),
          List.of());
    }
    boolean indicative = difference < defaults.indicativeBelow().likely();
    boolean single = isSingleReading(kind, test);
    return new RecoveryTest(
        test.at(),
        shown,
        indicative ? TestQuality.INDICATIVE : TestQuality.NORMAL,
        t.supply().map(s -> figures.supply(s, single)),
        t.exhaust().map(figures::exhaust),
        why(indicative, difference),
        warnings(test, single));
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

  private List<String> warnings(HeatRecoveryTest test, boolean single) {
    List<String> warnings = new ArrayList<>();
    if (single) {
      warnings.add(
          "The survey does not say that the temperatures are averages over whole cycles. A reading"
              + " at the start of supply reads high: the mean may be only %s of it, and the lower"
                  .formatted(Numbers.percent(defaults.singleReadingShare().likely()))
              + " bound allows for that.");
    }
    if (test.log().isPresent()) {
      warnings.add("A log of cycles is named as well; this version does not evaluate it.");
    }
    return warnings;
  }

  private static RecoveryTest without(HeatRecoveryTest test, TestQuality quality, String why) {
    return new RecoveryTest(
        test.at(), Optional.empty(), quality, Optional.empty(), Optional.empty(), why, List.of());
  }
}
