package org.drysill.assess.recovery.cycle;

import static org.drysill.assess.recovery.cycle.TestFigures.celsius;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.physics.recovery.cycle.CycleRatio;
import org.drysill.physics.recovery.cycle.FoldedPoint;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.recovery.CycleCriteria;

/**
 * The figures of a log of cycles, with their workings.
 *
 * @param id the id of the test
 * @param errors of the thermometers
 * @param rules what a log must show
 */
record CycleFigures(String id, Errors errors, CycleCriteria rules) {
  private static final Citation CYCLES =
      new Citation(
          "Cycles found in the log itself: turns, lag and whole half-cycles",
          Optional.empty(),
          Optional.empty(),
          How.DERIVED);

  /**
   * Of the thermometers.
   *
   * @param inRoom error of the temperature at the grille in the room [K]
   * @param outdoors error of that at the grille outdoors [K]
   * @param room error of the temperature of the room [K]
   * @param outdoor error of that outdoors [K]
   */
  record Errors(double inRoom, double outdoors, double room, double outdoor) {}

  /** Indoors less outdoors [K]. */
  Figure difference(Range indoor, Range outdoor) {
    return figures().difference(indoor, outdoor);
  }

  /** The ratio on the supply side, within 0 and 1. */
  Figure supply(CycleRatio cycles) {
    double u =
        cycles.uncertainty(
            errors.inRoom(),
            errors.room(),
            errors.outdoor(),
            rules.coverage().likely(),
            lagError(cycles));
    return ratio(
        "supply_ratio",
        "temperature ratio on the supply side, from whole cycles",
        "η = Σ q·(Tsup - Te)·Δt / Σ q·(Ti - Te)·Δt",
        cycles,
        u,
        List.of(
            celsius("Tsup", "mean supply air", Range.around(cycles.judged(), errors.inRoom())),
            celsius("Ti", "room air", Range.around(cycles.near(), errors.room())),
            celsius("Te", "outdoor air", Range.around(cycles.far(), errors.outdoor()))));
  }

  /** The ratio on the exhaust side. */
  Figure exhaust(CycleRatio cycles) {
    double u =
        cycles.uncertainty(
            errors.outdoors(),
            errors.outdoor(),
            errors.room(),
            rules.coverage().likely(),
            lagError(cycles));
    return ratio(
        "exhaust_ratio",
        "temperature ratio on the exhaust side, from whole cycles",
        "η = Σ q·(Ti - Texh)·Δt / Σ q·(Ti - Te)·Δt",
        cycles,
        u,
        List.of(
            celsius("Texh", "mean exhaust air", Range.around(cycles.judged(), errors.outdoors())),
            celsius("Ti", "room air", Range.around(cycles.far(), errors.room())),
            celsius("Te", "outdoor air", Range.around(cycles.near(), errors.outdoor()))));
  }

  /** Whether the thermometer is slow for the half-cycle. */
  boolean isSlow(CycleRatio cycles) {
    return cycles.timing().lagS() > rules.slowThermometer().likely() * cycles.timing().cycleS() / 2;
  }

  private double lagError(CycleRatio cycles) {
    return (isSlow(cycles) ? rules.lagErrorSlow() : rules.lagError()).likely();
  }

  private Figure ratio(
      String what, String name, String formula, CycleRatio cycles, double u, List<Input> air) {
    List<Input> inputs = new ArrayList<>(air);
    inputs.add(points("s", "standard error by the scatter of cycles", cycles.scatterError()));
    inputs.add(points("δ", "taken out for the lag of the thermometer", cycles.lagCorrection()));
    inputs.add(points("e", "turns known to half a reading", cycles.edgeError()));
    return figures()
        .of(
            what,
            name,
            new Range(
                Math.max(0, cycles.ratio() - u),
                Math.max(0, Math.min(1, cycles.ratio())),
                Math.min(1, Math.max(0, cycles.ratio() + u))),
            Unit.PERCENT,
            formula
                + "; u = √(u(T)² + (%s·s)² + (%s·δ)² + e²)"
                    .formatted(
                        Said.number(rules.coverage().likely()), lagError(cycles) == 1 ? "1" : "¼"),
            inputs,
            Optional.of(
                "Over %d whole cycles. What a thermometer is off by does not average out over cycles."
                    .formatted(cycles.used())));
  }

  /** How the unit turns. */
  CyclesSeen seen(CycleRatio cycles, boolean flowLogged) {
    boolean apart = flowLogged || !cycles.timing().equalHalves();
    return new CyclesSeen(
        cycles.used(),
        cycles.settling(),
        cycles.incomplete(),
        time("supply_time", "length of the supply half-cycle", cycles.timing().judgedS()),
        time(
            "other_time",
            "length of the half-cycle in which it takes air out",
            cycles.timing().otherS()),
        Optional.of(cycles.timing().pauseS())
            .filter(p -> p > 0)
            .map(p -> time("pause", "pause at a turn, at least", p)),
        time("lag", "time constant of the thermometer at the grille", cycles.timing().lagS()),
        mean("room", "room air over the log", cycles.near(), errors.room()),
        mean("outdoors", "outdoor air over the log", cycles.far(), errors.outdoor()),
        mean("supply", "air supplied, mean of whole half-cycles", cycles.judged(), errors.inRoom()),
        moment("early", "ratio read early in supply", Course.early(cycles)),
        moment("late", "ratio read at the end of supply", Course.late(cycles)),
        apart ? Optional.of(balance(cycles)) : Optional.empty(),
        Course.of(cycles));
  }

  private Figure balance(CycleRatio cycles) {
    return figures()
        .of(
            "balance",
            "air supplied by air taken out in a cycle",
            Range.exactly(cycles.balance()),
            Unit.RATIO,
            "Σ q·Δt of supply / Σ q·Δt of the other half",
            List.of(),
            Optional.empty());
  }

  private Figure time(String what, String name, double seconds) {
    return figures()
        .of(
            what,
            name,
            Range.exactly(seconds),
            Unit.SECONDS,
            "read from the log",
            List.of(),
            Optional.empty());
  }

  private Figure mean(String what, String name, double celsius, double error) {
    return figures()
        .of(
            what,
            name,
            Range.around(celsius, error),
            Unit.CELSIUS,
            "mean over the log",
            List.of(),
            Optional.empty());
  }

  private Figure moment(String what, String name, FoldedPoint point) {
    return figures()
        .of(
            what,
            name,
            Range.exactly(point.ratio()),
            Unit.PERCENT,
            "(T - Te) / (Ti - Te), %s s after supply began"
                .formatted(Said.seconds(point.offsetS())),
            List.of(),
            Optional.of("As the thermometer showed it, mean of all cycles."));
  }

  private static Input points(String symbol, String name, double ratio) {
    return Input.of(symbol, name, Range.exactly(ratio), Unit.PERCENTAGE_POINT, Basis.CALCULATED);
  }

  private TestFigures figures() {
    return new TestFigures(id, List.of(CYCLES));
  }
}
