package org.drysill.assess.recovery.cycle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.physics.Range;
import org.drysill.physics.recovery.cycle.CycleOutcome;
import org.drysill.physics.recovery.cycle.CycleRatio;
import org.drysill.physics.recovery.cycle.CycleRules;
import org.drysill.physics.recovery.cycle.CycleSearch;
import org.drysill.physics.recovery.cycle.FaceLog;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.recovery.CycleCriteria;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.survey.HeatRecoveryTest;
import org.drysill.survey.log.CycleLog;
import org.drysill.survey.log.CycleSamples;
import org.drysill.survey.log.LogQuantity;
import org.drysill.yaml.Quantity;

/** Evaluates the log of a test. */
public final class CycleAssessment {
  private static final Citation ONE_SPEED =
      new Citation(
          "Planning assumption",
          Optional.empty(),
          Optional.of("fans of alternating units run at one speed between two turns"),
          How.ASSUMPTION);

  private final InstrumentErrors errors;
  private final RecoveryDefaults defaults;
  private final CycleCriteria criteria;
  private final CycleRules rules;

  /** With the errors of instruments and what is taken for granted. */
  public CycleAssessment(InstrumentErrors errors, RecoveryDefaults defaults) {
    this.errors = errors;
    this.defaults = defaults;
    this.criteria = defaults.cycles();
    this.rules = rules(criteria);
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
    Optional<Ends> indoor =
        ends(samples, LogQuantity.INDOOR_TEMPERATURE, test.indoor().or(test::extract), test);
    Optional<Ends> outdoor =
        ends(samples, LogQuantity.OUTDOOR_TEMPERATURE, test.outdoor(), test);
    if (indoor.isEmpty() || outdoor.isEmpty()) {
      return LoggedCycles.refused(
          Optional.empty(),
          "Refused: its log has no temperature %s, and none was noted beside it."
              .formatted(indoor.isEmpty() ? "of the room" : "outdoors"));
    }
    return new OneLog(id, test, samples, indoor.get(), outdoor.get()).evaluate();
  }

  /**
   * The air before one face.
   *
   * @param celsius for each reading of the log [°C]
   * @param mean over the log, with the error of the thermometer [°C]
   * @param logged whether the log has it
   */
  private record Ends(double[] celsius, Range mean, boolean logged) {
    double error() {
      return (mean.high() - mean.low()) / 2;
    }
  }

  private Optional<Ends> ends(
      CycleSamples samples, LogQuantity quantity, Optional<Quantity> noted, HeatRecoveryTest test) {
    return LoggedFace.filled(samples, quantity)
        .map(column -> new Ends(column, mean(column, test), true))
        .or(() -> noted.map(q -> new Ends(constant(q, samples), noted(q, test), false)));
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
    return errors.temperature(new Quantity(mean, mean, mean, ""), test.instrument());
  }

  private final class OneLog {
    private final HeatRecoveryTest test;
    private final CycleSamples samples;
    private final Ends indoor;
    private final Ends outdoor;
    private final LoggedFace faces;
    private final CycleFigures figures;

    OneLog(String id, HeatRecoveryTest test, CycleSamples samples, Ends indoor, Ends outdoor) {
      this.test = test;
      this.samples = samples;
      this.indoor = indoor;
      this.outdoor = outdoor;
      this.faces = new LoggedFace(samples, indoor.celsius(), outdoor.celsius());
      double face = error(outdoor.mean().likely());
      this.figures =
          new CycleFigures(
              id,
              new CycleFigures.Errors(face, face, indoor.error(), outdoor.error()),
              criteria);
    }

    private double error(double celsius) {
      Range bounds =
          errors.temperature(
              new Quantity(celsius, celsius, celsius, ""), test.instrument());
      return (bounds.high() - bounds.low()) / 2;
    }

    LoggedCycles evaluate() {
      Optional<Figure> difference =
          Optional.of(figures.difference(indoor.mean(), outdoor.mean()));
      double kelvin = difference.get().likely();
      if (kelvin < defaults.refusedBelow().likely()) {
        return LoggedCycles.refused(
            difference,
            "Refused: indoors was only %s K warmer than outdoors; below %s K the test says nothing."
                .formatted(
                    Said.number(kelvin), Said.number(defaults.refusedBelow().likely())));
      }
      Optional<FaceLog> inRoom = faces.inRoom();
      if (inRoom.isEmpty()) {
        return LoggedCycles.refused(
            difference, "Refused: its log has no temperature at the grille in the room.");
      }
      CycleOutcome outcome = CycleSearch.of(inRoom.get(), rules);
      if (outcome instanceof CycleRatio cycles) {
        return judged(difference, kelvin, cycles);
      }
      return LoggedCycles.refused(
          difference, NoCycleWords.of((CycleOutcome.None) outcome, criteria));
    }

    private LoggedCycles judged(Optional<Figure> difference, double kelvin, CycleRatio cycles) {
      if (cycles.ratio() > 1 || cycles.ratio() < 0) {
        return LoggedCycles.refused(
            difference,
            cycles.ratio() > 1
                ? "Refused: the supply air was warmer than the room, which no unit does without a"
                    + " heater."
                : "Refused: the supply air was colder than outdoors.");
      }
      List<String> warnings = new ArrayList<>(warnings(cycles));
      Optional<CycleOutcome> exhaust =
          faces.outdoors().map(log -> CycleSearch.of(log, rules));
      exhaust
          .filter(CycleOutcome.None.class::isInstance)
          .ifPresent(
              none ->
                  warnings.add(
                      "The grille outdoors was logged but gives no ratio. "
                          + NoCycleWords.of((CycleOutcome.None) none, criteria)));
      boolean flowLogged = LoggedFace.filled(samples, LogQuantity.FLOW).isPresent();
      return new LoggedCycles(
          difference,
          Optional.of(figures.supply(cycles)),
          exhaust
              .filter(CycleRatio.class::isInstance)
              .map(e -> figures.exhaust((CycleRatio) e)),
          Optional.of(figures.seen(cycles, flowLogged)),
          new Weakness(defaults, figures).of(kelvin, cycles),
          Optional.empty(),
          warnings,
          flowLogged ? List.of() : List.of(constantFlow()));
    }

    private List<String> warnings(CycleRatio cycles) {
      List<String> warnings = new ArrayList<>();
      if (!indoor.logged()) {
        warnings.add("The log lacks the air of the room; the reading beside it stands for all of it.");
      }
      if (!outdoor.logged()) {
        warnings.add("The log lacks outdoor air; the reading beside it stands for all of it.");
      }
      if (!cycles.timing().equalHalves() && LoggedFace.filled(samples, LogQuantity.FLOW).isEmpty()) {
        warnings.add(
            "The halves of its cycle are unlike: it supplies for %s s and takes out for %s s."
                .formatted(
                    Said.seconds(cycles.timing().judgedS()),
                    Said.seconds(cycles.timing().otherS())));
      }
      return warnings;
    }

    private Assumption constantFlow() {
      return new Assumption(
          figures.id() + ".constant_flow",
          "Flow of the unit through its supply half-cycle",
          "constant",
          "its log of temperatures has no flow, so that all moments of supply count alike",
          "Log the flow at the grille beside the temperatures.",
          ONE_SPEED);
    }
  }
}
