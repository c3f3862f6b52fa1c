package org.drysill.assess.logs;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Finding;

/**
 * What the loggers say.
 *
 * @param accounts what each usable file held, rooms in the order of the survey, outdoors last
 * @param unused the files that cannot be used
 * @param rooms the air of each logged room
 * @param assumptions what was taken for granted
 */
public record LogsResult(
    List<LogAccount> accounts,
    List<UnusedLog> unused,
    List<LoggedRoom> rooms,
    List<Assumption> assumptions) {
  /** Copies the lists. */
  public LogsResult {
    accounts = List.copyOf(accounts);
    unused = List.copyOf(unused);
    rooms = List.copyOf(rooms);
    assumptions = List.copyOf(assumptions);
  }

  /** No logger was left. */
  public static LogsResult none() {
    return new LogsResult(List.of(), List.of(), List.of(), List.of());
  }

  /** True where the survey names no log at all. */
  public boolean isEmpty() {
    return accounts.isEmpty() && unused.isEmpty();
  }

  /** The log of a room. */
  public Optional<LoggedRoom> room(String id) {
    return rooms.stream().filter(r -> r.room().equals(id)).findFirst();
  }

  /** Moving averages against their published limits, room by room. */
  public List<Finding> criteria() {
    return rooms.stream().flatMap(r -> r.criteria().stream()).toList();
  }
}
