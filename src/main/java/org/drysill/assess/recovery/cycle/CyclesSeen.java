package org.drysill.assess.recovery.cycle;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * How a unit turns, from its log.
 *
 * @param used whole cycles that count
 * @param settling cycles at the start that were left out while the store settled
 * @param incomplete cycles that were left out because a part is missing or of odd length
 * @param supplyTime length of the supply half-cycle, its pause included [s]
 * @param otherTime length of the other half-cycle [s]
 * @param pause how long it stands still at a turn at least [s], where the log shows it
 * @param lag time constant of the thermometer at the grille [s]
 * @param room mean temperature of the room [°C]
 * @param outdoors mean temperature outdoors [°C]
 * @param supply mean temperature of the air supplied, the lag taken out [°C]
 * @param early ratio that a reading early in supply would have shown
 * @param late ratio that a reading at the end of supply would have shown
 * @param balance air supplied by air taken out in a cycle, where the log tells them apart
 * @param course mean temperature at the grille over the cycle, as the thermometer showed it
 */
public record CyclesSeen(
    int used,
    int settling,
    int incomplete,
    Figure supplyTime,
    Figure otherTime,
    Optional<Figure> pause,
    Figure lag,
    Figure room,
    Figure outdoors,
    Figure supply,
    Figure early,
    Figure late,
    Optional<Figure> balance,
    List<CoursePoint> course) {
  /** Copies the list. */
  public CyclesSeen {
    course = List.copyOf(course);
  }

  /**
   * A moment of the cycle.
   *
   * @param seconds since supply began [s]
   * @param celsius mean over the cycles [°C]
   */
  public record CoursePoint(double seconds, double celsius) {}
}
