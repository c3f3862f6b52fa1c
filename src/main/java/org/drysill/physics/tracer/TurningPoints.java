package org.drysill.physics.tracer;

import java.util.ArrayList;
import java.util.List;
import org.drysill.physics.Bounds;

/**
 * Where a noisy series turns: every reversal by at least a threshold, and none smaller. Troughs and
 * peaks alternate; the first and last reading count as whatever they must be.
 */
public final class TurningPoints {
  private TurningPoints() {}

  /**
   * A turn.
   *
   * @param index of the reading at which it turns
   * @param peak true for a peak, false for a trough
   */
  public record Turn(int index, boolean peak) {}

  /**
   * The turns of the readings from one index to another, both included; none where they never move
   * by the threshold.
   *
   * @param threshold least movement between neighbouring turns, above 0
   */
  public static List<Turn> of(double[] values, int from, int to, double threshold) {
    Bounds.above("threshold", threshold, 0);
    List<Turn> turns = new ArrayList<>();
    int low = from;
    int high = from;
    for (int i = from; i <= to; i++) {
      low = values[i] < values[low] ? i : low;
      high = values[i] > values[high] ? i : high;
      boolean seeksTrough = turns.isEmpty() || last(turns).peak();
      boolean seeksPeak = turns.isEmpty() || !last(turns).peak();
      if (seeksTrough && values[i] - values[low] >= threshold) {
        turns.add(new Turn(low, false));
        high = i;
      } else if (seeksPeak && values[high] - values[i] >= threshold) {
        turns.add(new Turn(high, true));
        low = i;
      }
    }
    if (!turns.isEmpty()) {
      turns.add(last(turns).peak() ? new Turn(low, false) : new Turn(high, true));
    }
    return turns;
  }

  private static Turn last(List<Turn> turns) {
    return turns.get(turns.size() - 1);
  }
}
