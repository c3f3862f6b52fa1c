package org.drysill.survey.log;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.survey.CycleLogger;

/**
 * The logs of a visit.
 *
 * @param rooms the logs of rooms by the id of the room, in the order of the survey
 * @param outdoor the log of outdoor air
 * @param cycles the logs of the cycles of heat recovery units by what the survey says of them
 */
public record Logs(
    Map<String, Log> rooms, Optional<Log> outdoor, Map<CycleLogger, CycleLog> cycles) {
  /** Copies the maps. */
  public Logs {
    rooms = Collections.unmodifiableMap(new LinkedHashMap<>(rooms));
    cycles = Collections.unmodifiableMap(new LinkedHashMap<>(cycles));
  }

  /** The logs of a visit without one of cycles. */
  public Logs(Map<String, Log> rooms, Optional<Log> outdoor) {
    this(rooms, outdoor, Map.of());
  }

  /** No logs at all. */
  public static Logs none() {
    return new Logs(Map.of(), Optional.empty());
  }

  /** The log of a room. */
  public Optional<Log> room(String id) {
    return Optional.ofNullable(rooms.get(id));
  }

  /** The log of the cycles of a heat recovery unit. */
  public Optional<CycleLog> cycles(CycleLogger logger) {
    return Optional.ofNullable(cycles.get(logger));
  }

  /** Every log: rooms in the order of the survey, outdoors, cycles last. */
  public Stream<LogFile> all() {
    return Stream.of(rooms.values().stream(), outdoor.stream(), cycles.values().stream())
        .flatMap(logs -> logs);
  }
}
