package org.drysill.survey.log.read;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.survey.log.LogFlaw;
import org.drysill.survey.log.LogNote;
import org.drysill.survey.log.LogQuality;
import org.drysill.survey.log.LogQuantity;

/** Counts what is odd about a log, with the first few lines of each. */
final class Notes {
  private static final int LINES = 5;

  private final Map<LogFlaw, Map<Optional<LogQuantity>, Tally>> tallies =
      new EnumMap<>(LogFlaw.class);

  private static final class Tally {
    private long count;
    private double seconds;
    private final List<Long> lines = new ArrayList<>(LINES);
  }

  void add(LogFlaw flaw, long line) {
    add(flaw, Optional.empty(), line, 0);
  }

  void add(LogFlaw flaw, long line, double seconds) {
    add(flaw, Optional.empty(), line, seconds);
  }

  void add(LogFlaw flaw, LogQuantity quantity, long line) {
    add(flaw, Optional.of(quantity), line, 0);
  }

  void add(LogFlaw flaw, LogQuantity quantity, long line, double seconds) {
    add(flaw, Optional.of(quantity), line, seconds);
  }

  private void add(LogFlaw flaw, Optional<LogQuantity> quantity, long line, double seconds) {
    Tally tally =
        tallies
            .computeIfAbsent(flaw, key -> new LinkedHashMap<>())
            .computeIfAbsent(quantity, key -> new Tally());
    tally.count++;
    tally.seconds += seconds;
    if (tally.lines.size() < LINES) {
      tally.lines.add(line);
    }
  }

  LogQuality quality() {
    List<LogNote> notes = new ArrayList<>();
    tallies.forEach(
        (flaw, byQuantity) ->
            byQuantity.forEach(
                (quantity, tally) ->
                    notes.add(
                        new LogNote(flaw, quantity, tally.count, tally.lines, tally.seconds))));
    return new LogQuality(notes);
  }
}
