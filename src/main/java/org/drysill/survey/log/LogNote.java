package org.drysill.survey.log;

import java.util.List;
import java.util.Optional;

/**
 * One sort of oddity of a log.
 *
 * @param flaw the sort
 * @param quantity the quantity that it concerns; empty where it is the row
 * @param count how often it was met
 * @param lines the first few lines of the file where it was met
 * @param seconds the time that it concerns [s], where it has one: of gaps, of a stuck sensor
 */
public record LogNote(
    LogFlaw flaw, Optional<LogQuantity> quantity, long count, List<Long> lines, double seconds) {
  /** Copies the list. */
  public LogNote {
    lines = List.copyOf(lines);
  }
}
