package org.drysill.assess.logs.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.Trace;
import org.drysill.assess.logs.air.AirChangeOfLog.Tracer;
import org.drysill.assess.ventilation.rooms.RoomAirResult;
import org.drysill.physics.tracer.AirChangeEvidence;
import org.drysill.physics.tracer.Decays;
import org.drysill.physics.tracer.Substance;
import org.drysill.physics.tracer.TracerSeries;
import org.drysill.reference.logs.LogRules;

/** Reads the air change of logged rooms out of decays. */
final class AirChanges {
  private static final double HOUR_S = 3600;
  private final LogRules rules;
  private final Co2Background background;
  private final RoomAirResult believed;

  AirChanges(LogRules rules, Co2Background background, RoomAirResult believed) {
    this.rules = rules;
    this.background = background;
    this.believed = believed;
  }

  List<AirChangeOfLog> of(LoggedRoom room) {
    List<AirChangeOfLog> all = new ArrayList<>();
    Trace trace = room.trace();
    if (IntStream.range(0, trace.size()).anyMatch(i -> !Double.isNaN(trace.ppm(i)))) {
      all.add(made(room, Tracer.CO2, byCo2(room)));
    }
    if (room.source().simultaneous()) {
      all.add(made(room, Tracer.VAPOUR, byVapour(trace)));
    }
    return all;
  }

  private Decays byCo2(LoggedRoom room) {
    Trace trace = room.trace();
    IntToDoubleFunction outdoors = i -> background.ppm(trace, i);
    return Decays.find(
        series(trace, i -> trace.ppm(i) - outdoors.applyAsDouble(i), outdoors),
        rules.errors().ofCo2(background.uncertaintyPpm(room)),
        new Substance.Inert(),
        rules.decays().ofCo2());
  }

  private Decays byVapour(Trace trace) {
    return Decays.find(
        series(trace, trace::excessKgM3, trace::outdoorContentKgM3),
        rules.errors().ofVapour(),
        rules.vapour(),
        rules.decays().ofVapour());
  }

  /** The series of a trace by the middles of its steps; where either is unknown, a gap. */
  static TracerSeries series(
      Trace trace, IntToDoubleFunction excess, IntToDoubleFunction background) {
    int[] known =
        IntStream.range(0, trace.size())
            .filter(i -> !Double.isNaN(excess.applyAsDouble(i)))
            .toArray();
    return TracerSeries.of(
        values(known, i -> hour(trace, i)),
        values(known, excess),
        values(known, background),
        values(known, i -> 1));
  }

  /** The middle of a step [h since the first]. */
  static double hour(Trace trace, int step) {
    return (trace.beginEpochS(step) - trace.beginEpochS(0) + trace.stepS() / 2.0) / HOUR_S;
  }

  private static double[] values(int[] steps, IntToDoubleFunction what) {
    return IntStream.of(steps).mapToDouble(what).toArray();
  }

  private AirChangeOfLog made(LoggedRoom room, Tracer tracer, Decays decays) {
    Optional<AirChangeEvidence> evidence = decays.airChange(rules.confidence().confidence());
    AirChangeFigures figures = new AirChangeFigures(room, tracer, rules);
    Optional<Figure> airChange = evidence.map(figures::airChange);
    Optional<Figure> hardlyAbove = evidence.flatMap(figures::hardlyAbove);
    Optional<Finding> finding =
        airChange.flatMap(
            found ->
                believed
                    .room(room.room())
                    .flatMap(r -> r.airChange())
                    .map(b -> new BelievedAir(room, tracer, b).against(found, hardlyAbove)));
    return new AirChangeOfLog(
        room.room(),
        room.roomName(),
        tracer,
        decays.accepted().size(),
        Refusals.of(decays),
        airChange,
        hardlyAbove,
        finding,
        finding.map(Finding::because).orElseGet(() -> said(tracer, airChange)));
  }

  private static String said(Tracer tracer, Optional<Figure> airChange) {
    return airChange.isPresent()
        ? "There is no figure for the air that this room gets to hold it against."
        : "No fall of " + tracer.word() + " was clear enough to be read.";
  }
}
