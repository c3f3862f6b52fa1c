package org.drysill.assess.logs.air;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.LogsResult;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.reference.logs.LogRules;
import org.drysill.reference.readings.ReadingRules;

/** Reads out of logs how much air rooms get and what gave off water. */
public final class LoggedAirAssessor {
  private static final double PPM = 1e6;

  private LoggedAirAssessor() {}

  /**
   * Assesses the logs of a home.
   *
   * @param air what it is believed to get
   * @param itemised the production by the list of sources [kg/s]
   */
  public static LoggedAir assess(
      Home home,
      LogsResult logs,
      VentilationResult air,
      Figure itemised,
      LogRules rules,
      ReadingRules readings) {
    List<LoggedRoom> rooms = logs.rooms();
    Co2Background background = new Co2Background(home, readings);
    AirChanges airChanges = new AirChanges(rules, background, air.rooms());
    Nights nights = new Nights(background, readings, PPM * rules.balance().leastCo2().likely());
    EventGroups events = new EventGroups(rules);
    return new LoggedAir(
        rooms.stream().flatMap(r -> airChanges.of(r).stream()).toList(),
        rooms.stream()
            .filter(r -> home.room(r.room()).orElseThrow().habitable())
            .map(nights::of)
            .flatMap(Optional::stream)
            .toList(),
        rooms.stream().map(events::of).filter(e -> !e.groups().isEmpty()).toList(),
        new LoggedProduction(
                home,
                air.provided().wholeHome(),
                itemised,
                rules.balance().ofVapour(readings.balance()))
            .of(rooms));
  }
}
