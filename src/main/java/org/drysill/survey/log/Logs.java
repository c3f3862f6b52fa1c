package org.drysill.survey.log;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The logs of a visit.
 *
 * @param rooms the logs of rooms by the id of the room, in the order of the survey
 * @param outdoor the log of outdoor air
 */
public record Logs(Map<String, Log> rooms, Optional<Log> outdoor) {
  /** Copies the map. */
  public Logs {
    rooms = Collections.unmodifiableMap(new LinkedHashMap<>(rooms));
  }

  /** No logs at all. */
  public static Logs none() {
    return new Logs(Map.of(), Optional.empty());
  }

  /** The log of a room. */
  public Optional<Log> room(String id) {
    return Optional.ofNullable(rooms.get(id));
  }

  /** Every log: rooms in the order of the survey, outdoors last. */
  public Stream<Log> all() {
    return Stream.concat(rooms.values().stream(), outdoor.stream());
  }
}
