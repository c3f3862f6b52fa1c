package org.drysill.assess.recovery.cycle;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.recovery.cycle.CyclesSeen.CoursePoint;
import org.drysill.physics.recovery.cycle.CycleRatio;
import org.drysill.physics.recovery.cycle.FoldedPoint;

/** The temperature at the grille over the cycle. */
final class Course {
  /** As many points as a small chart shows. */
  private static final int MOST_POINTS = 72;

  /** A surveyor who sees the unit turn reads so much later, share of the time in which it blows. */
  private static final double EARLY = 0.15;

  private Course() {}

  static List<CoursePoint> of(CycleRatio cycles) {
    List<FoldedPoint> folded = cycles.folded();
    int together = Math.max(1, (int) Math.ceil(folded.size() / (double) MOST_POINTS));
    List<CoursePoint> course = new ArrayList<>();
    for (int i = 0; i < folded.size(); i += together) {
      List<FoldedPoint> near = folded.subList(i, Math.min(folded.size(), i + together));
      double ratio = near.stream().mapToDouble(FoldedPoint::ratio).average().orElseThrow();
      course.add(
          new CoursePoint(
              near.stream().mapToDouble(FoldedPoint::offsetS).average().orElseThrow(),
              cycles.far() + ratio * (cycles.near() - cycles.far())));
    }
    return course;
  }

  static FoldedPoint early(CycleRatio cycles) {
    return at(cycles, EARLY * cycles.timing().blowingS());
  }

  static FoldedPoint late(CycleRatio cycles) {
    return at(cycles, cycles.timing().blowingS());
  }

  /** The last point before a moment; the first where none is. */
  private static FoldedPoint at(CycleRatio cycles, double seconds) {
    FoldedPoint last = cycles.folded().get(0);
    for (FoldedPoint point : cycles.folded()) {
      last = point.offsetS() <= seconds ? point : last;
    }
    return last;
  }
}
