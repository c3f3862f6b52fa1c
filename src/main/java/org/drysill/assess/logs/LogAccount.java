package org.drysill.assess.logs;

import java.util.List;
import java.util.Optional;
import org.drysill.survey.log.LogFigures;
import org.drysill.survey.log.LogNote;

/**
 * What a file held and what was odd about it.
 *
 * @param room the room's id; empty for the outdoor log
 * @param name the place in sentences
 * @param file the file as the survey names it
 * @param zone the time zone of its clock
 * @param zoneStated whether survey or file state the zone
 * @param figures rows, steps, gaps
 * @param notes what was odd
 */
public record LogAccount(
    Optional<String> room,
    String name,
    String file,
    String zone,
    boolean zoneStated,
    LogFigures figures,
    List<LogNote> notes) {
  /** Copies the list. */
  public LogAccount {
    notes = List.copyOf(notes);
  }
}
