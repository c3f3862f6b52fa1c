package org.drysill.survey.log.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.drysill.survey.log.LogFlaw;
import org.drysill.survey.log.LogNote;
import org.drysill.survey.log.LogQuality;
import org.drysill.survey.log.LogQuantity;

/** Counts what is odd about a log, with the first few lines of each. */
final class Notes {
  private static final int LINES = 5;

  /** Every sort by quantity, and one more place for what concerns the row. */
  private static final int PLACES = LogQuantity.values().length + 1;

  private final Map<Integer, Tally> tallies = new TreeMap<>();

  private static final class Tally {
    private long count;
    private double seconds;
    private final List<Long> lines = new ArrayList<>(LINES);
  }

  void add(LogFlaw flaw, long line) {
    add(flaw, PLACES - 1, line, 0);
  }

  void add(LogFlaw flaw, long line, double seconds) {
    add(flaw, PLACES - 1, line, seconds);
  }

  void add(LogFlaw flaw, LogQuantity quantity, long line) {
    add(flaw, quantity.ordinal(), line, 0);
  }

  void add(LogFlaw flaw, LogQuantity quantity, long line, double seconds) {
    add(flaw, quantity.ordinal(), line, seconds);
  }

  private void add(LogFlaw flaw, int place, long line, double seconds) {
    Tally tally = tallies.computeIfAbsent(flaw.ordinal() * PLACES + place, key -> new Tally());
    tally.count++;
    tally.seconds += seconds;
    if (tally.lines.size() < LINES) {
      tally.lines.add(line);
    }
  }

  LogQuality quality() {
    return new LogQuality(
        tallies.entrySet().stream().map(e -> note(e.getKey(), e.getValue())).toList());
  }

  private static LogNote note(int key, Tally tally) {
    int place = key % PLACES;
    Optional<LogQuantity> quantity =
        place == PLACES - 1 ? Optional.empty() : Optional.of(LogQuantity.values()[place]);
    return new LogNote(
        LogFlaw.values()[key / PLACES], quantity, tally.count, tally.lines, tally.seconds);
  }
}
