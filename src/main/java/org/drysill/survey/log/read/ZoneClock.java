package org.drysill.survey.log.read;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.List;

/**
 * Turns what the clock of a logger shows into moments. Away from the changes of the clocks this is
 * one addition; in the hour that comes twice the order of the rows decides, in the hour that is
 * skipped the clock is taken as not yet put forward.
 */
final class ZoneClock {
  /** No moment yet. */
  static final long NONE = Long.MIN_VALUE;

  private static final long DAY_MS = 86_400_000L;

  private final ZoneRules rules;
  private final boolean newestFirst;
  private long plainFrom = Long.MAX_VALUE;
  private long plainTo = Long.MIN_VALUE;
  private long plainOffsetMs;
  private boolean repeated;
  private boolean skipped;

  /**
   * A clock of a zone.
   *
   * @param newestFirst whether the rows run back in time
   */
  ZoneClock(ZoneId zone, boolean newestFirst) {
    this.rules = zone.getRules();
    this.newestFirst = newestFirst;
  }

  /**
   * The moment [ms since 1970-01-01T00:00Z] of a time of the clock.
   *
   * @param localMs what the clock shows, as ms since 1970-01-01T00:00 of its own
   * @param previousMs the moment of the row before, or {@link #NONE}
   */
  long moment(long localMs, long previousMs) {
    repeated = false;
    skipped = false;
    return localMs >= plainFrom && localMs < plainTo
        ? localMs - plainOffsetMs
        : change(localMs, previousMs);
  }

  /** True where the last time comes twice. */
  boolean isRepeated() {
    return repeated;
  }

  /** True where no clock that follows the zone shows the last time. */
  boolean isSkipped() {
    return skipped;
  }

  private long change(long localMs, long previousMs) {
    LocalDateTime local =
        LocalDateTime.ofEpochSecond(Math.floorDiv(localMs, 1000L), 0, ZoneOffset.UTC);
    List<ZoneOffset> offsets = rules.getValidOffsets(local);
    repeated = offsets.size() == 2;
    skipped = offsets.isEmpty();
    if (repeated) {
      return told(localMs - ms(offsets.get(0)), localMs - ms(offsets.get(1)), previousMs);
    }
    ZoneOffset offset = skipped ? rules.getTransition(local).getOffsetBefore() : offsets.get(0);
    long moment = localMs - ms(offset);
    if (!skipped) {
      remember(Instant.ofEpochMilli(moment), offset);
    }
    return moment;
  }

  /** Of the two moments of a time that comes twice, the one that does not turn back. */
  private long told(long earlier, long later, long previousMs) {
    if (newestFirst) {
      return previousMs == NONE || later <= previousMs ? later : earlier;
    }
    return previousMs == NONE || earlier >= previousMs ? earlier : later;
  }

  /** The times for which the offset is the same and no change is near. */
  private void remember(Instant moment, ZoneOffset offset) {
    plainOffsetMs = ms(offset);
    ZoneOffsetTransition before = rules.previousTransition(moment);
    ZoneOffsetTransition after = rules.nextTransition(moment);
    plainFrom =
        before == null
            ? Long.MIN_VALUE
            : before.getInstant().toEpochMilli() + plainOffsetMs + DAY_MS;
    plainTo =
        after == null ? Long.MAX_VALUE : after.getInstant().toEpochMilli() + plainOffsetMs - DAY_MS;
  }

  private static long ms(ZoneOffset offset) {
    return offset.getTotalSeconds() * 1000L;
  }
}
