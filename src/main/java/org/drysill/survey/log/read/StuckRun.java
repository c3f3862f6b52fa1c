package org.drysill.survey.log.read;

import org.drysill.survey.log.LogFlaw;
import org.drysill.survey.log.LogQuantity;

/** Watches for how long a value stays the same to its last digit. */
final class StuckRun {
  private final LogQuantity quantity;
  private final double longestS;
  private final Notes notes;
  private double value = Double.NaN;
  private long sinceMs;
  private long untilMs;
  private long sinceLine;

  StuckRun(LogQuantity quantity, double longestS, Notes notes) {
    this.quantity = quantity;
    this.longestS = longestS;
    this.notes = notes;
  }

  /** Looks at the next value; one that is not there changes nothing. */
  void see(double next, long atMs, long line) {
    if (next == value) {
      untilMs = atMs;
    } else if (!Double.isNaN(next)) {
      end();
      value = next;
      sinceMs = atMs;
      untilMs = atMs;
      sinceLine = line;
    }
  }

  /** Ends the run, at a gap or at the end of the log. */
  void end() {
    double seconds = (untilMs - sinceMs) / 1000.0;
    if (!Double.isNaN(value) && seconds > longestS) {
      notes.add(LogFlaw.STUCK, quantity, sinceLine, seconds);
    }
    value = Double.NaN;
  }
}
