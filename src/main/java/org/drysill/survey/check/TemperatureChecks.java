package org.drysill.survey.check;

import static org.drysill.survey.check.CheckList.each;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drysill.survey.HeatRecoveryTest;
import org.drysill.survey.OutdoorReading;
import org.drysill.survey.Room;
import org.drysill.survey.RoomReading;
import org.drysill.survey.SurfaceReading;
import org.drysill.survey.Survey;
import org.drysill.yaml.Moment;
import org.drysill.yaml.Quantity;

/**
 * Temperatures stand in the order that heating puts them in: outdoors, surface, air. Readings that
 * differ by no more than instruments do are let pass.
 */
final class TemperatureChecks {
  /** What two instruments may differ by, K; judgement. */
  private static final double SLACK = 0.5;

  private final Survey survey;
  private final CheckList list;

  private TemperatureChecks(Survey survey, CheckList list) {
    this.survey = survey;
    this.list = list;
  }

  static void check(Survey survey, CheckList list) {
    TemperatureChecks checks = new TemperatureChecks(survey, list);
    each(survey.rooms(), "rooms", checks::room);
  }

  private void room(Room room, String path) {
    each(room.readings(), path + ".readings", this::roomReading);
    each(
        room.windows(),
        path + ".windows",
        (w, at) -> each(w.readings(), at + ".readings", (r, in) -> surface(r, room, in)));
    each(
        room.coldSpots(),
        path + ".cold_spots",
        (s, at) -> each(s.readings(), at + ".readings", (r, in) -> surface(r, room, in)));
    each(
        room.fans(),
        path + ".fans",
        (f, at) -> each(f.heatRecoveryTests(), at + ".heat_recovery_tests", this::test));
  }

  private void roomReading(RoomReading reading, String path) {
    outdoorOn(reading.at())
        .filter(outdoor -> outdoor.low() > reading.temperature().high() + SLACK)
        .ifPresent(
            outdoor ->
                list.add(
                    SurveyCode.OUTDOOR_ABOVE_INDOOR,
                    path + ".temperature",
                    reading.temperature().written() + " with " + outdoor.written() + " outdoors",
                    "a room that is warmer than outdoors"));
  }

  private void surface(SurfaceReading reading, Room room, String path) {
    Quantity surface = reading.surface();
    reading
        .air()
        .or(() -> airOn(reading.at(), room))
        .filter(air -> surface.low() > air.high() + SLACK)
        .ifPresent(
            air ->
                list.add(
                    SurveyCode.SURFACE_ABOVE_AIR,
                    path + ".surface",
                    surface.written() + " with " + air.written() + " in the air",
                    "a surface that is colder than the air; a heater or the sun may explain it"));
    reading
        .outdoor()
        .or(() -> outdoorOn(reading.at()))
        .filter(outdoor -> surface.high() < outdoor.low() - SLACK)
        .ifPresent(
            outdoor ->
                list.add(
                    SurveyCode.SURFACE_BELOW_OUTDOOR,
                    path + ".surface",
                    surface.written() + " with " + outdoor.written() + " outdoors",
                    "a surface that is warmer than outdoors"));
  }

  private void test(HeatRecoveryTest test, String path) {
    if (test.indoor().isEmpty() || test.outdoor().isEmpty()) {
      return;
    }
    Quantity indoor = test.indoor().get();
    Quantity outdoor = test.outdoor().get();
    if (outdoor.low() > indoor.high()) {
      list.add(
          SurveyCode.OUTDOOR_ABOVE_INDOOR,
          path + ".outdoor",
          outdoor.written() + " with " + indoor.written() + " indoors",
          "indoor air that is warmer than outdoor air");
      return;
    }
    test.supply()
        .filter(s -> s.low() > indoor.high() + SLACK || s.high() < outdoor.low() - SLACK)
        .ifPresent(
            s ->
                list.add(
                    SurveyCode.SUPPLY_OUT_OF_SPAN,
                    path + ".supply",
                    s.written(),
                    "between "
                        + outdoor.written()
                        + " outdoors and "
                        + indoor.written()
                        + " indoors"));
  }

  /** The only air temperature of the room on that day; empty where there are none or several. */
  private static Optional<Quantity> airOn(Optional<Moment> at, Room room) {
    List<Quantity> air =
        room.readings().stream()
            .filter(r -> sameDay(r.at(), at))
            .map(RoomReading::temperature)
            .toList();
    return air.size() == 1 ? Optional.of(air.get(0)) : Optional.empty();
  }

  private Optional<Quantity> outdoorOn(Optional<Moment> at) {
    List<Quantity> outdoor =
        survey.outdoorReadings().stream()
            .filter(r -> sameDay(r.at(), at))
            .map(OutdoorReading::temperature)
            .toList();
    return outdoor.size() == 1 ? Optional.of(outdoor.get(0)) : Optional.empty();
  }

  private static boolean sameDay(Optional<Moment> one, Optional<Moment> other) {
    Optional<LocalDate> day = one.map(Moment::date);
    return day.isEmpty() || other.isEmpty() || day.equals(other.map(Moment::date));
  }
}
