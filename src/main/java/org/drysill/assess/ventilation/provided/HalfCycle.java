package org.drysill.assess.ventilation.provided;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.ventilation.Turning;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;
import org.drysill.yaml.Quantity;

/**
 * The part of its half cycle in which an alternating unit blows: s = (t − p) / t, with t the half
 * cycle and p the pause at each turn.
 *
 * <p>What was timed with a watch goes first, then what a log of its cycles shows. A log shows a
 * pause that is too short rather than too long, so the usual one is the upper bound beside it.
 */
final class HalfCycle {
  private final Turning usual;
  private final Map<String, LoggedTurns> logged;
  private final List<Assumption> assumptions = new ArrayList<>();

  /**
   * How units turn.
   *
   * @param usual where nobody timed them
   * @param logged what logs show, by the survey's id of the fan
   */
  HalfCycle(Turning usual, Map<String, LoggedTurns> logged) {
    this.usual = usual;
    this.logged = Map.copyOf(logged);
  }

  /** What was taken for granted so far. */
  List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }

  /** The share; empty where the unit does not turn or its pause was not timed. */
  Optional<Figure> inMotion(Fan fan, String name, Figure running) {
    if (fan.kind() != FanKind.ALTERNATING_HEAT_RECOVERY) {
      return Optional.empty();
    }
    Optional<Range> pause = fan.switchingPause().map(Quantity::range).or(() -> loggedPause(fan));
    if (pause.isEmpty()) {
      assumeNoPause(fan, name, running);
    }
    return pause.map(p -> inMotion(fan, name, p));
  }

  private Optional<Range> loggedPause(Fan fan) {
    return turns(fan)
        .flatMap(LoggedTurns::pause)
        .map(Figure::likely)
        .map(p -> new Range(p, p, Math.max(p, usual.pause().value())));
  }

  private Optional<LoggedTurns> turns(Fan fan) {
    return Optional.ofNullable(logged.get(fan.id()));
  }

  private Figure inMotion(Fan fan, String name, Range pause) {
    Optional<Range> timed =
        fan.halfCycle().map(Quantity::range).or(() -> turns(fan).map(LoggedTurns::halfCycle));
    if (timed.isEmpty()) {
      assumeHalfCycle(fan, name);
    }
    Range half = timed.orElse(usual.halfCycle().range());
    Range share =
        new Range(
            blowing(pause.high(), half.low()),
            blowing(pause.likely(), half.likely()),
            blowing(pause.low(), half.high()));
    Basis basis = timed.isPresent() ? Basis.MEASURED : Basis.ASSUMED;
    List<Input> inputs = new ArrayList<>();
    inputs.add(Input.of("t", "half cycle", half, Unit.SECONDS, basis));
    inputs.add(Input.of("p", "pause at each turn", pause, Unit.SECONDS, Basis.MEASURED));
    turns(fan).ifPresent(log -> inputs.addAll(log.inputs()));
    return new Figure(
        "fan." + fan.id() + ".in_motion",
        "share of its half cycle in which " + name + " blows",
        share,
        Unit.PERCENT,
        basis,
        () ->
            new Working(
                "s = (t − p) / t",
                inputs,
                timed.isPresent() && fan.switchingPause().isPresent()
                    ? List.of()
                    : List.of(usual.source()),
                fan.switchingPause().isPresent()
                    ? Optional.empty()
                    : Optional.of(
                        "The pause of a log is a lower bound; the usual one is the upper.")));
  }

  /** A pause that is longer than a half cycle nobody timed leaves nothing. */
  private static double blowing(double pause, double half) {
    return Math.max(0, half - pause) / half;
  }

  private void assumeHalfCycle(Fan fan, String name) {
    assumptions.add(
        new Assumption(
            "fan." + fan.id() + ".half_cycle",
            "time from one turn of " + name + " to the next",
            usual.halfCycle().written(),
            "The survey tells its pause, but not its half cycle.",
            "Time it with a watch from one turn to the next, over ten turns.",
            usual.source()));
  }

  /** Said only where the flow is known better than a pause would change it. */
  private void assumeNoPause(Fan fan, String name, Figure running) {
    Range half =
        fan.halfCycle()
            .map(Quantity::range)
            .or(() -> turns(fan).map(LoggedTurns::halfCycle))
            .orElse(usual.halfCycle().range());
    double loss = usual.pause().value() / half.likely();
    Range flow = running.value();
    boolean matters = flow.likely() - flow.low() < loss * flow.likely();
    if (matters) {
      assumptions.add(
          new Assumption(
              "fan." + fan.id() + ".switching_pause",
              "pause of " + name + " at each turn",
              "none",
              "The survey does not tell it; "
                  + usual.pause().written()
                  + " at each turn would take "
                  + Math.round(100 * loss)
                  + " % of its air.",
              "Time with a watch how long it stands still when it turns, and from one turn to the"
                  + " next.",
              usual.source()));
    }
  }
}
