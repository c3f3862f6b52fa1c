package org.drysill.assess.logs;

import java.util.List;
import java.util.Optional;

/**
 * A log that cannot be used.
 *
 * @param room the room's id; empty for the outdoor log
 * @param name the place in sentences
 * @param file the file as the survey names it
 * @param reasons why, each with its line where it has one
 */
public record UnusedLog(Optional<String> room, String name, String file, List<String> reasons) {
  /** Copies the list. */
  public UnusedLog {
    reasons = List.copyOf(reasons);
  }
}
