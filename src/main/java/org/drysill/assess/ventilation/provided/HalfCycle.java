package org.drysill.assess.ventilation.provided;

import java.util.ArrayList;
import java.util.List;
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
 */
final class HalfCycle {
  private final Turning usual;
  private final List<Assumption> assumptions = new ArrayList<>();

  HalfCycle(Turning usual) {
    this.usual = usual;
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
    if (fan.switchingPause().isEmpty()) {
      assumeNoPause(fan, name, running);
    }
    return fan.switchingPause().map(pause -> inMotion(fan, name, pause.range()));
  }

  private Figure inMotion(Fan fan, String name, Range pause) {
    Optional<Quantity> timed = fan.halfCycle();
    if (timed.isEmpty()) {
      assumeHalfCycle(fan, name);
    }
    Range half = timed.orElse(usual.halfCycle()).range();
    Range share =
        new Range(
            blowing(pause.high(), half.low()),
            blowing(pause.likely(), half.likely()),
            blowing(pause.low(), half.high()));
    return new Figure(
        "fan." + fan.id() + ".in_motion",
        "share of its half cycle in which " + name + " blows",
        share,
        Unit.PERCENT,
        timed.isPresent() ? Basis.MEASURED : Basis.ASSUMED,
        () ->
            new Working(
                "s = (t − p) / t",
                List.of(
                    Input.of(
                        "t",
                        "half cycle in s",
                        half,
                        Unit.COUNT,
                        timed.isPresent() ? Basis.MEASURED : Basis.ASSUMED),
                    Input.of("p", "pause at each turn in s", pause, Unit.COUNT, Basis.MEASURED)),
                timed.isPresent() ? List.of() : List.of(usual.source()),
                Optional.empty()));
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
    Range half = fan.halfCycle().orElse(usual.halfCycle()).range();
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
