package org.drysill.assess.surfaces;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.drysill.assess.Basis;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.humidity.HumidityResult.HomeAir;
import org.drysill.assess.humidity.RoomAir;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.LogsResult;
import org.drysill.physics.Range;

/**
 * The indoor vapour of a home as far as it was read; what is missing takes the upper limit of a
 * humidity class, as a stated assumption.
 *
 * @param home of rooms that were not read, by the home as a whole
 * @param rooms of single rooms, by the survey's id
 */
public record IndoorVapours(Optional<IndoorVapour> home, Map<String, IndoorVapour> rooms) {
  /** Copies the map in its order. */
  public IndoorVapours {
    rooms = Collections.unmodifiableMap(new LinkedHashMap<>(rooms));
  }

  /** Nothing was read. */
  public static IndoorVapours none() {
    return new IndoorVapours(Optional.empty(), Map.of());
  }

  /**
   * What was read: of each room its last reading, of the home what holds for rooms without one.
   *
   * @param humidity what the readings say
   */
  public static IndoorVapours of(HumidityResult humidity) {
    return new IndoorVapours(
        humidity.home().map(IndoorVapours::ofUnread), rooms(humidity, List.of()));
  }

  /**
   * What was logged or read: of each room the mean of its log, else its last reading, of the home
   * what holds for rooms without either. A log beside no outdoor air of its own time is worth less
   * than a reading that has some, and one of less than a day is worth nothing here.
   *
   * @param home the home
   * @param humidity what the readings say
   * @param logs what the logs say
   */
  public static IndoorVapours of(Home home, HumidityResult humidity, LogsResult logs) {
    List<LoggedRoom> logged = logs.rooms().stream().filter(LoggedRoom::holdsADay).toList();
    List<LoggedRoom> beside = logged.stream().filter(log -> log.source().simultaneous()).toList();
    Optional<IndoorVapour> unread =
        humidity
            .home()
            .filter(HomeAir::simultaneous)
            .map(IndoorVapours::ofUnread)
            .or(() -> ofUnread(home, beside))
            .or(() -> ofUnread(home, logged))
            .or(() -> humidity.home().map(IndoorVapours::ofUnread));
    return new IndoorVapours(unread, rooms(humidity, logged));
  }

  private static Map<String, IndoorVapour> rooms(HumidityResult humidity, List<LoggedRoom> logged) {
    Map<String, IndoorVapour> rooms = new LinkedHashMap<>();
    logged.stream()
        .filter(log -> !log.source().simultaneous())
        .forEach(log -> rooms.put(log.room(), ofLog(log)));
    humidity.readings().stream()
        .filter(air -> air.outdoor().simultaneous() || !rooms.containsKey(air.room()))
        .forEach(air -> rooms.put(air.room(), ofRoom(air)));
    logged.stream()
        .filter(log -> log.source().simultaneous())
        .forEach(log -> rooms.put(log.room(), ofLog(log)));
    return rooms;
  }

  private static IndoorVapour ofLog(LoggedRoom log) {
    return new IndoorVapour(
        log.excessPressure().value(),
        log.outdoorTemperature().likely(),
        log.excessPressure().basis(),
        "the mean of the log in this room over "
            + Words.whole(log.days())
            + " days against "
            + log.outdoorSaid(),
        Optional.of(log.excessPressure().id()),
        List.of());
  }

  /**
   * Rooms without log or reading have the mean of the heated rooms that were logged, by volume, and
   * lie between the driest and the dampest of them.
   */
  private static Optional<IndoorVapour> ofUnread(Home home, List<LoggedRoom> logs) {
    List<Weighed> rooms =
        logs.stream()
            .flatMap(
                log ->
                    home.room(log.room()).filter(RoomFacts::heated).stream()
                        .map(room -> new Weighed(log, room.volume().likely())))
            .toList();
    if (rooms.isEmpty()) {
      return Optional.empty();
    }
    List<Range> excesses = rooms.stream().map(r -> r.log().excessPressure().value()).toList();
    Range bounds =
        new Range(
            excesses.stream().mapToDouble(Range::low).min().orElseThrow(),
            mean(rooms, log -> log.excessPressure().likely()),
            excesses.stream().mapToDouble(Range::high).max().orElseThrow());
    return Optional.of(
        new IndoorVapour(
            bounds,
            mean(rooms, log -> log.outdoorTemperature().likely()),
            Basis.ASSUMED,
            "the rooms that were logged",
            Optional.empty(),
            List.of()));
  }

  private record Weighed(LoggedRoom log, double volume) {}

  private static double mean(List<Weighed> rooms, ToDoubleFunction<LoggedRoom> value) {
    double volume = rooms.stream().mapToDouble(Weighed::volume).sum();
    return rooms.stream()
        .mapToDouble(r -> r.volume() / volume * value.applyAsDouble(r.log()))
        .sum();
  }

  private static IndoorVapour ofRoom(RoomAir air) {
    return new IndoorVapour(
        air.excessPressure().value(),
        air.outdoor().temperature().likely(),
        air.excessPressure().basis(),
        "the reading in this room",
        Optional.of(air.excessPressure().id()),
        List.of());
  }

  private static IndoorVapour ofUnread(HomeAir home) {
    return new IndoorVapour(
        home.excessPressureUnread().value(),
        home.outdoorTemperature().likely(),
        home.excessPressureUnread().basis(),
        "the mean of the rooms that were read",
        Optional.of(home.excessPressureUnread().id()),
        List.of());
  }

  /** True where the room itself was read. */
  public boolean isRead(String room) {
    return rooms.containsKey(room);
  }

  /** That of a room, else that of the home. */
  public Optional<IndoorVapour> of(String room) {
    return Optional.ofNullable(rooms.get(room)).or(() -> home);
  }
}
