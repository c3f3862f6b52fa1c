package org.drysill.assess.logs.air;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.air.AirChangeOfLog.Tracer;
import org.drysill.physics.Range;
import org.drysill.physics.tracer.AirChangeEvidence;
import org.drysill.physics.tracer.AirChangeEvidence.FromTracer;
import org.drysill.physics.tracer.AirChangeEvidence.FromVapour;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.logs.LogRules;

/** The air change that decays tell, as figures. */
final class AirChangeFigures {
  private static final Citation DECAY =
      Citation.of("ASTM E741", "2011", "concentration decay", How.MEMORY);

  private final LoggedRoom room;
  private final String id;
  private final LogRules rules;

  AirChangeFigures(LoggedRoom room, Tracer tracer, LogRules rules) {
    this.room = room;
    this.id = "log." + room.room() + ".air_change_by_" + (tracer == Tracer.CO2 ? "co2" : "vapour");
    this.rules = rules;
  }

  /** By CO₂ a value with its interval, by vapour the least. */
  Figure airChange(AirChangeEvidence evidence) {
    if (evidence instanceof FromTracer tracer) {
      return figure(
          "",
          "Air change of the " + room.roomName() + " by decays of CO₂",
          tracer.perHour(),
          new Working(
              "C(t) = Cb + a exp(−n t), rates combined by their logarithms",
              List.of(decays(evidence)),
              List.of(DECAY, rules.confidence().modelError().source()),
              Optional.of(
                  "Bounds: interval of 95 %, with the differences between days. Air from other"
                      + " rooms counts as far as it is as fresh as outdoors.")));
    }
    FromVapour vapour = (FromVapour) evidence;
    return figure(
        "_at_least",
        "Least air change of the " + room.roomName() + " by decays of vapour",
        Range.exactly(vapour.atLeastPerHour()),
        new Working(
            "n ≥ lower end of the rate, for the rate is n/M and M at least 1",
            List.of(decays(evidence), capacitance(vapour)),
            List.of(DECAY, rules.capacitance().source()),
            Optional.of("Walls and furniture give vapour back, so that it falls more slowly.")));
  }

  /** By vapour alone. */
  Optional<Figure> hardlyAbove(AirChangeEvidence evidence) {
    return evidence instanceof FromVapour vapour
        ? Optional.of(
            figure(
                "_hardly_above",
                "Air change that the " + room.roomName() + " hardly exceeds, by decays of vapour",
                Range.exactly(vapour.hardlyAbovePerHour()),
                new Working(
                    "upper end of the rate × highest M",
                    List.of(decays(evidence), capacitance(vapour)),
                    List.of(DECAY, rules.capacitance().source()),
                    Optional.empty())))
        : Optional.empty();
  }

  private Figure figure(String suffix, String name, Range value, Working working) {
    return new Figure(id + suffix, name, value, Unit.AIR_CHANGE, Basis.CALCULATED, () -> working);
  }

  private static Input decays(AirChangeEvidence evidence) {
    return Input.of(
        "k", "Decays that count", Range.exactly(evidence.decays()), Unit.COUNT, Basis.MEASURED);
  }

  private static Input capacitance(FromVapour vapour) {
    return Input.of(
        "M",
        "Moisture store of the room over that of its air",
        vapour.capacitance(),
        Unit.RATIO,
        Basis.ASSUMED);
  }
}
