package org.drysill.physics.tracer;

/**
 * A stretch of a series in which the concentration falls.
 *
 * @param from index of its first reading
 * @param to index of its last reading
 * @param startHours time of its first reading [h]
 * @param endHours time of its last reading [h]
 * @param startExcess excess at its start, as read
 * @param endExcess excess at its end, as read
 * @param ending what ended it
 */
public record Stretch(
    int from,
    int to,
    double startHours,
    double endHours,
    double startExcess,
    double endExcess,
    Ending ending) {
  /** What ends a fall. */
  public enum Ending {
    /** The concentration rose again. */
    RISE,
    /** Readings are missing. */
    GAP,
    /** The concentration stayed where it was. */
    FLAT,
    /** It was too close to the background to be told from it. */
    FLOOR,
    /** The log ends. */
    END_OF_LOG
  }

  static Stretch of(TracerSeries series, int from, int to, Ending ending) {
    return new Stretch(
        from,
        to,
        series.hour(from),
        series.hour(to),
        series.excess(from),
        series.excess(to),
        ending);
  }

  /** How long it lasts [h]. */
  public double hours() {
    return endHours - startHours;
  }

  /** How many readings it has. */
  public int readings() {
    return to - from + 1;
  }
}
