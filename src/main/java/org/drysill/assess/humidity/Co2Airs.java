package org.drysill.assess.humidity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.physics.Range;
import org.drysill.physics.flow.TracerGas;
import org.drysill.reference.readings.Co2Rules;
import org.drysill.survey.RoomReading;

/** What the CO₂ readings say, with the reservation that a moment is not a steady state. */
final class Co2Airs {
  private static final double PPM = 1e-6;

  private final Co2Rules rules;
  private final InstrumentErrors errors;

  Co2Airs(Co2Rules rules, InstrumentErrors errors) {
    this.rules = rules;
    this.errors = errors;
  }

  List<Co2Air> all(Home home) {
    List<Co2Air> all = new ArrayList<>();
    for (RoomFacts room : home.rooms()) {
      int number = 0;
      for (RoomReading reading : room.room().readings()) {
        number++;
        if (reading.co2().isPresent()) {
          all.add(air(room, RoomAirs.id(room, number), reading));
        }
      }
    }
    return all;
  }

  private Co2Air air(RoomFacts room, String id, RoomReading reading) {
    Range read = errors.co2(reading.co2().orElseThrow(), reading.instrument());
    Figure concentration =
        new Figure(
            id + ".co2",
            "CO₂ in the " + room.name(),
            read,
            Unit.PPM,
            Basis.MEASURED,
            () -> new Working("as read", List.of(), List.of(), Optional.empty()));
    Figure excess =
        new Figure(
            id + ".co2_excess",
            "CO₂ in the " + room.name() + " over outdoors",
            read.minus(rules.outdoor().range()),
            Unit.PPM,
            Basis.CALCULATED,
            () -> excessWorking(concentration));
    Optional<Figure> perPerson =
        excess.value().low() > 0 ? Optional.of(perPerson(id, excess)) : Optional.empty();
    return new Co2Air(
        room.id(), room.name(), reading.at(), concentration, excess, perPerson, said(perPerson));
  }

  private Figure perPerson(String id, Figure excess) {
    Range emission = rules.perPerson().range();
    Range flow =
        new Range(
            flow(emission.low(), excess.value().high()),
            flow(emission.likely(), excess.likely()),
            flow(emission.high(), excess.value().low()));
    return new Figure(
        id + ".air_per_person",
        "Fresh air for each person present, had the air come to a steady state",
        flow,
        Unit.AIRFLOW,
        Basis.ASSUMED,
        () ->
            SteadyCarbonDioxide.working(
                emission,
                excess,
                List.of(Sources.TRACER, rules.perPersonSource()),
                "Indicative: one reading does not show that the air was steady."));
  }

  private static double flow(double emission, double excessPpm) {
    return TracerGas.steadyFlowM3S(emission, excessPpm * PPM, 0);
  }

  private Working excessWorking(Figure concentration) {
    return new Working(
        "C − Cb",
        List.of(
            Input.of("C", concentration),
            Input.of("Cb", "CO₂ outdoors", rules.outdoor().range(), Unit.PPM, Basis.ASSUMED)),
        List.of(rules.outdoorSource()),
        Optional.empty());
  }

  private static String said(Optional<Figure> perPerson) {
    return perPerson.isPresent()
        ? "Indicative only: the air for each person holds if the same people had been in the room,"
            + " with its doors and windows as they were, for some hours."
        : "Too close to outdoor air to say how much fresh air there is; an empty room reads so too.";
  }
}
