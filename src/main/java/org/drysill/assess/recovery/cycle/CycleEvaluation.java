package org.drysill.assess.recovery.cycle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.physics.recovery.cycle.CycleOutcome;
import org.drysill.physics.recovery.cycle.CycleRatio;
import org.drysill.physics.recovery.cycle.CycleRules;
import org.drysill.physics.recovery.cycle.CycleSearch;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.survey.log.CycleSamples;
import org.drysill.survey.log.LogQuantity;

/** Evaluates one log whose air before both faces is known. */
final class CycleEvaluation {
  private static final Citation ONE_SPEED =
      new Citation(
          "Planning assumption",
          Optional.empty(),
          Optional.of("fans of alternating units run at one speed between two turns"),
          How.ASSUMPTION);

  private final RecoveryDefaults defaults;
  private final CycleRules rules;
  private final AirBefore indoor;
  private final AirBefore outdoor;
  private final LoggedFace faces;
  private final CycleFigures figures;
  private final boolean flowLogged;

  /**
   * A log.
   *
   * @param id the id of the test
   * @param faceError error of the temperature at either grille [K]
   */
  CycleEvaluation(
      RecoveryDefaults defaults,
      CycleRules rules,
      String id,
      CycleSamples samples,
      double faceError,
      AirBefore indoor,
      AirBefore outdoor) {
    this.defaults = defaults;
    this.rules = rules;
    this.indoor = indoor;
    this.outdoor = outdoor;
    this.faces = new LoggedFace(samples, indoor.celsius(), outdoor.celsius());
    this.figures =
        new CycleFigures(
            id,
            new CycleFigures.Errors(faceError, faceError, indoor.error(), outdoor.error()),
            defaults.cycles());
    this.flowLogged = LoggedFace.filled(samples, LogQuantity.FLOW).isPresent();
  }

  LoggedCycles evaluate() {
    Optional<Figure> difference = Optional.of(figures.difference(indoor.mean(), outdoor.mean()));
    double kelvin = difference.get().likely();
    if (kelvin < defaults.refusedBelow().likely()) {
      return LoggedCycles.refused(
          difference,
          "Refused: indoors was only %s K warmer than outdoors; below %s K the test says nothing."
              .formatted(Said.number(kelvin), Said.number(defaults.refusedBelow().likely())));
    }
    CycleOutcome outcome = CycleSearch.of(faces.inRoom(), rules);
    if (outcome instanceof CycleRatio cycles) {
      return judged(difference, kelvin, cycles);
    }
    return LoggedCycles.refused(
        difference, NoCycleWords.of((CycleOutcome.None) outcome, defaults.cycles()));
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
    Optional<CycleOutcome> exhaust = faces.outdoors().map(log -> CycleSearch.of(log, rules));
    exhaust
        .filter(CycleOutcome.None.class::isInstance)
        .ifPresent(
            none ->
                warnings.add(
                    "The grille outdoors was logged but gives no ratio. "
                        + NoCycleWords.of((CycleOutcome.None) none, defaults.cycles())));
    return new LoggedCycles(
        difference,
        Optional.of(figures.supply(cycles)),
        exhaust.filter(CycleRatio.class::isInstance).map(e -> figures.exhaust((CycleRatio) e)),
        Optional.of(figures.seen(cycles, flowLogged)),
        new Weakness(defaults, figures).of(kelvin, cycles),
        Optional.empty(),
        warnings,
        flowLogged ? List.of() : List.of(constantFlow()));
  }

  private List<String> warnings(CycleRatio cycles) {
    List<String> warnings = new ArrayList<>();
    if (!indoor.isLogged()) {
      warnings.add(
          "The log lacks the air of the room; the reading beside it stands for all of it.");
    }
    if (!outdoor.isLogged()) {
      warnings.add("The log lacks outdoor air; the reading beside it stands for all of it.");
    }
    if (!cycles.timing().equalHalves() && !flowLogged) {
      warnings.add(
          "The halves of its cycle are unlike: it supplies for %s s and takes out for %s s."
              .formatted(
                  Said.seconds(cycles.timing().judgedS()), Said.seconds(cycles.timing().otherS())));
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
