package org.drysill.physics.tracer;

import java.util.ArrayList;
import java.util.List;

/** The parts of a log between its gaps. */
public final class Gaps {
  /** Times in hours are rounded: a difference within these few milliseconds is none [h]. */
  public static final double ROUNDING_HOURS = 1e-6;

  private Gaps() {}

  /**
   * A part without gaps.
   *
   * @param from index of its first reading
   * @param to index of its last reading
   */
  public record Part(int from, int to) {}

  /** Cuts a log wherever two readings lie further apart than allowed [h]. */
  public static List<Part> between(double[] hours, double longestHours) {
    List<Part> parts = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= hours.length; i++) {
      if (i == hours.length || hours[i] - hours[i - 1] > longestHours + ROUNDING_HOURS) {
        parts.add(new Part(from, i - 1));
        from = i;
      }
    }
    return parts;
  }
}
