package org.drysill.assess.surfaces;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The indoor vapour of a home as far as it was read; what is missing takes the upper limit of a
 * humidity class, as a stated assumption.
 *
 * @param home of the home as a whole
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

  /** That of a room, else that of the home. */
  public Optional<IndoorVapour> of(String room) {
    return Optional.ofNullable(rooms.get(room)).or(() -> home);
  }
}
