package org.drysill.assess.surfaces;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.humidity.HumidityResult.HomeAir;
import org.drysill.assess.humidity.RoomAir;

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
    Map<String, IndoorVapour> rooms = new LinkedHashMap<>();
    humidity.readings().forEach(air -> rooms.put(air.room(), ofRoom(air)));
    return new IndoorVapours(humidity.home().map(IndoorVapours::ofUnread), rooms);
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
