package org.drysill.assess.humidity;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.survey.RoomReading;

/** Makes the air of each room reading that has a humidity. */
final class RoomAirs {
  private final Home home;
  private final ReadingRules rules;
  private final InstrumentErrors errors;
  private final OutdoorAirs outdoors;

  RoomAirs(Home home, ReadingRules rules, InstrumentErrors errors) {
    this.home = home;
    this.rules = rules;
    this.errors = errors;
    this.outdoors = new OutdoorAirs(home, rules, errors);
  }

  List<RoomAir> all() {
    List<RoomAir> all = new ArrayList<>();
    for (RoomFacts room : home.rooms()) {
      int number = 0;
      for (RoomReading reading : room.room().readings()) {
        number++;
        if (reading.humidity().isPresent()) {
          all.add(air(room, number, reading));
        }
      }
    }
    return all;
  }

  /** Start of the ids of a reading's figures; the first reading of a room has no number. */
  static String id(RoomFacts room, int number) {
    return "room." + room.id() + (number == 1 ? "" : ".reading_" + number);
  }

  private RoomAir air(RoomFacts room, int number, RoomReading reading) {
    String id = id(room, number);
    MeasuredAir air =
        new MeasuredAir(
            errors.temperature(reading.temperature(), reading.instrument()),
            errors.humidity(reading.humidity().orElseThrow(), reading.instrument()));
    AirFigures figures = new AirFigures(id, "the air in the " + room.name(), air);
    Excess excess =
        new Excess(
            id,
            "the air in the " + room.name(),
            air,
            figures,
            outdoors.at(id + ".outdoor", reading.at()));
    return new RoomAir(
        room.id(),
        room.name(),
        reading.at(),
        figures.temperature(),
        figures.humidity(),
        figures.dewPoint(),
        figures.vapourPressure(),
        figures.vapourContent(),
        excess.outdoor().air(),
        excess.content(),
        excess.pressure(),
        excess.pressureError(),
        excess.humidityClass(rules.classes()));
  }
}
