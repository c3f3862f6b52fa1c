package org.drysill.assess.ventilation.rooms;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.drysill.assess.AirChanges;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.ventilation.VentilationDefaults;

/** The figures of rooms and doors, each over the low, the likely and the high case. */
final class RoomFigures {
  private static final String NOTE =
      "From the balance of all rooms: doors closed, fans at their mean flows, leaks spread by volume,"
          + " wind and warmth such that the whole home gets the outdoor air found for it.";

  private final VentilationDefaults defaults;

  RoomFigures(VentilationDefaults defaults) {
    this.defaults = defaults;
  }

  Figure outdoorAir(RoomFacts room, int i, Map<Case, AirState> mean) {
    Range supply = over(mean, state -> state.supply().get(i));
    Range leaks = over(mean, state -> state.leaksIn(i));
    return new Figure(
        "room." + room.id() + ".outdoor_air",
        "outdoor air that reaches the " + room.name() + " itself",
        over(mean, state -> state.supply().get(i) + state.leaksIn(i)),
        Unit.AIRFLOW,
        Basis.ASSUMED,
        () ->
            new Working(
                "q = q_supply + q_leaks",
                List.of(
                    Input.of(
                        "q_supply", "blown in by fans", supply, Unit.AIRFLOW, Basis.CALCULATED),
                    Input.of(
                        "q_leaks",
                        "in through leaks and ventilators",
                        leaks,
                        Unit.AIRFLOW,
                        Basis.ASSUMED)),
                List.of(defaults.roomAir().leakageExponent().source()),
                Optional.of(NOTE)));
  }

  Figure airChange(RoomFacts room, Figure outdoorAir) {
    return AirChanges.of(
        "room." + room.id() + ".outdoor_air_change",
        "outdoor air changes of the " + room.name(),
        outdoorAir,
        room.volume());
  }

  Figure doorPressure(Way way, int i, Place from, Place to, Map<Case, AirState> running) {
    Range flow =
        over(
            running,
            state -> Math.abs(state.network().between().get(i).flowM3S(state.pressures())));
    return new Figure(
        "door." + from.id() + "." + to.id() + ".pressure",
        "pressure across the way between "
            + from.name()
            + " and "
            + to.name()
            + " while every fan runs",
        over(
            running,
            state -> Math.abs(state.pressures().pa(way.from()) - state.pressures().pa(way.to()))),
        Unit.PASCAL,
        Basis.ASSUMED,
        () ->
            new Working(
                "Δp = ρ/2 × (q / (Cd × A))²",
                List.of(
                    Input.of("q", "flow through it", flow, Unit.AIRFLOW, Basis.CALCULATED),
                    Input.of(
                        "A",
                        "free area of the closed door with its edges, or of the open way",
                        Range.exactly(way.areaM2()),
                        Unit.VENT_AREA,
                        way.kind() == Way.Kind.MEASURED ? Basis.CALCULATED : Basis.ASSUMED),
                    Input.of(
                        "Cd",
                        "discharge coefficient",
                        Range.exactly(defaults.ventilators().discharge()),
                        Unit.RATIO,
                        Basis.PUBLISHED),
                    Input.of(
                        "ρ",
                        "density of air in kg/m³",
                        Range.exactly(defaults.ventilators().airDensity()),
                        Unit.RATIO,
                        Basis.PUBLISHED)),
                List.of(defaults.roomAir().doorEdges().source()),
                Optional.of("From the balance of all rooms while every fan runs.")));
  }

  private static Range over(Map<Case, AirState> states, ToDoubleFunction<AirState> value) {
    double likely = value.applyAsDouble(states.get(Case.LIKELY));
    double low = value.applyAsDouble(states.get(Case.LOW));
    double high = value.applyAsDouble(states.get(Case.HIGH));
    return new Range(
        Math.min(likely, Math.min(low, high)), likely, Math.max(likely, Math.max(low, high)));
  }
}
