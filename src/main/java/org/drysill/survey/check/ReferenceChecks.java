package org.drysill.survey.check;

import static org.drysill.survey.check.CheckList.each;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.survey.Fan;
import org.drysill.survey.Instrument;
import org.drysill.survey.Room;
import org.drysill.survey.Survey;

/** Every id that is referred to exists. */
final class ReferenceChecks {
  private final List<String> rooms;
  private final List<String> instruments;
  private final CheckList list;

  private ReferenceChecks(Survey survey, CheckList list) {
    this.rooms = survey.rooms().stream().map(Room::id).toList();
    this.instruments = survey.visit().instruments().stream().map(Instrument::id).toList();
    this.list = list;
  }

  static void check(Survey survey, CheckList list) {
    ReferenceChecks checks = new ReferenceChecks(survey, list);
    checks.instrumentsAreTold(survey.visit().instruments());
    each(
        survey.dwelling().combustionAppliances(),
        "dwelling.combustion_appliances",
        (appliance, path) -> appliance.room().ifPresent(room -> checks.room(room, path + ".room")));
    each(
        survey.outdoorReadings(),
        "outdoor_readings",
        (reading, path) -> checks.instrument(reading.instrument(), path));
    survey.outdoorLogger().ifPresent(l -> checks.instrument(l.instrument(), "outdoor_logger"));
    each(survey.rooms(), "rooms", checks::room);
  }

  private void instrumentsAreTold(List<Instrument> listed) {
    List<String> seen = new ArrayList<>();
    each(
        listed,
        "visit.instruments",
        (instrument, path) -> {
          if (seen.contains(instrument.id())) {
            list.add(
                SurveyCode.INSTRUMENT_TWICE,
                path + ".id",
                CheckList.quote(instrument.id()),
                "an id of its own for each instrument");
          }
          seen.add(instrument.id());
        });
  }

  private void room(Room room, String path) {
    each(room.doors(), path + ".doors", (door, at) -> door(door.to(), room, at + ".to"));
    each(room.readings(), path + ".readings", (r, at) -> instrument(r.instrument(), at));
    room.logger().ifPresent(logger -> instrument(logger.instrument(), path + ".logger"));
    each(
        room.windows(),
        path + ".windows",
        (window, at) ->
            each(window.readings(), at + ".readings", (r, in) -> instrument(r.instrument(), in)));
    each(
        room.coldSpots(),
        path + ".cold_spots",
        (spot, at) ->
            each(spot.readings(), at + ".readings", (r, in) -> instrument(r.instrument(), in)));
    each(room.fans(), path + ".fans", this::fan);
  }

  private void fan(Fan fan, String path) {
    fan.measuredFlow().ifPresent(f -> instrument(f.instrument(), path + ".measured_flow"));
    fan.boostFlow().ifPresent(f -> instrument(f.instrument(), path + ".boost_flow"));
    each(
        fan.heatRecoveryTests(),
        path + ".heat_recovery_tests",
        (test, at) -> instrument(test.instrument(), at));
  }

  private void door(String to, Room from, String key) {
    if (to.equals(from.id())) {
      list.add(
          SurveyCode.DOOR_TO_ITSELF,
          key,
          CheckList.quote(to),
          "the id of the room on the other side");
    } else {
      room(to, key);
    }
  }

  private void room(String id, String key) {
    if (!rooms.contains(id)) {
      list.addUnknownId(SurveyCode.NO_SUCH_ROOM, key, id, rooms, "a room");
    }
  }

  private void instrument(Optional<String> id, String path) {
    id.filter(i -> !instruments.contains(i))
        .ifPresent(
            i ->
                list.addUnknownId(
                    SurveyCode.NO_SUCH_INSTRUMENT,
                    path + ".instrument",
                    i,
                    instruments,
                    "an instrument under visit.instruments"));
  }
}
