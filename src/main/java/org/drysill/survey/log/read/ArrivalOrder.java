package org.drysill.survey.log.read;

import org.drysill.survey.log.LogFlaw;
import org.drysill.survey.log.LogLimits;

/** Gives rows their moments in the order in which they stand, and says where that order breaks. */
final class ArrivalOrder {
  private static final long HOUR_MS = 3_600_000;
  private static final long ABOUT_MS = 600_000;

  private final LogLimits limits;
  private final Notes notes;
  private final ZoneClock zone;
  private final int direction;
  private final long clockSetAfterMs;
  private long lastMs;
  private boolean started;
  private LogFlaw pending;
  private long pendingLine;

  ArrivalOrder(Layout layout, LogLimits limits, Notes notes) {
    this.limits = limits;
    this.notes = notes;
    this.zone = new ZoneClock(layout.told().zone(), layout.newestFirst());
    this.direction = layout.newestFirst() ? -1 : 1;
    this.clockSetAfterMs = limits.clockSetAfter().toEpochMilli();
    this.lastMs = layout.middleMs();
  }

  /** The moment of a row [ms], or {@link ZoneClock#NONE}, with a note, where it cannot be used. */
  long moment(long clockMs, boolean absolute, long line) {
    long moment = absolute ? clockMs : zone.moment(clockMs, started ? lastMs : ZoneClock.NONE);
    if (moment < clockSetAfterMs) {
      notes.add(LogFlaw.CLOCK_NOT_SET, line);
      return ZoneClock.NONE;
    }
    if (lastMs != ZoneClock.NONE && Math.abs(moment - lastMs) > limits.farJumpS() * 1000) {
      notes.add(LogFlaw.FAR_IN_TIME, line);
      return ZoneClock.NONE;
    }
    if (!absolute && zone.isRepeated()) {
      notes.add(LogFlaw.REPEATED_HOUR, line);
    } else if (!absolute && zone.isSkipped()) {
      notes.add(LogFlaw.SKIPPED_HOUR, line);
    }
    if (started) {
      compare((moment - lastMs) * direction, line);
    }
    started = true;
    lastMs = moment;
    return moment;
  }

  void finish() {
    settle(0);
  }

  private void compare(long step, long line) {
    settle(step);
    if (step >= 0) {
      return;
    }
    pendingLine = line;
    if (Math.abs(-step - HOUR_MS) <= ABOUT_MS) {
      pending = LogFlaw.CLOCK_SET_BACK;
    } else {
      pending = -step > limits.blockJumpS() * 1000 ? LogFlaw.OVERLAP : LogFlaw.OUT_OF_ORDER;
    }
  }

  /** A row that goes back and is followed by one that leaps forward again stood there alone. */
  private void settle(long nextStep) {
    if (pending != null) {
      boolean alone = nextStep > limits.blockJumpS() * 1000;
      notes.add(alone ? LogFlaw.OUT_OF_ORDER : pending, pendingLine);
      pending = null;
    }
  }
}
