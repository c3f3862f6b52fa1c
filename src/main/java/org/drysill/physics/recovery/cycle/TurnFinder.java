package org.drysill.physics.recovery.cycle;

import java.util.ArrayList;
import java.util.List;
import org.drysill.physics.tracer.TurningPoints;
import org.drysill.physics.tracer.TurningPoints.Turn;

/** Finds where the temperature at a face comes back from the judged half. */
final class TurnFinder {
  /** A reversal by less than this share of the swing is no turn. */
  private static final double OF_SWING = 0.4;

  private final FaceLog log;
  private final double[] upward;
  private final double threshold;
  private int gaps;

  /**
   * In a log.
   *
   * @param direction 1 where the air before the face is the warmer one, else −1
   */
  TurnFinder(FaceLog log, int direction, Swing swing, double leastTurn) {
    this.log = log;
    this.upward = new double[log.size()];
    for (int i = 0; i < upward.length; i++) {
      upward[i] = direction * log.face(i);
    }
    this.threshold = Math.max(OF_SWING * swing.kelvin(), leastTurn);
  }

  /** How many gaps broke a cycle. */
  int gaps() {
    return gaps;
  }

  /**
   * Every cycle that no gap breaks.
   *
   * @param longestStepS a longer time between readings is a gap [s]
   */
  List<Cycle> cycles(double longestStepS) {
    List<Cycle> cycles = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= log.size(); i++) {
      if (i == log.size() || log.seconds(i) - log.seconds(i - 1) > longestStepS) {
        List<Double> marks = marks(from, i - 1);
        for (int k = 1; k < marks.size(); k++) {
          cycles.add(new Cycle(marks.get(k - 1), marks.get(k)));
        }
        gaps += i < log.size() ? 1 : 0;
        from = i;
      }
    }
    return cycles;
  }

  private List<Double> marks(int from, int to) {
    List<Turn> turns = TurningPoints.of(upward, from, to, threshold);
    List<Double> marks = new ArrayList<>();
    for (int i = 1; i < turns.size(); i++) {
      if (turns.get(i).peak()) {
        marks.add(halfWay(turns.get(i - 1).index(), turns.get(i).index()));
      }
    }
    return marks;
  }

  private double halfWay(int trough, int peak) {
    double level = (upward[trough] + upward[peak]) / 2;
    int i = trough;
    while (upward[i + 1] < level) {
      i++;
    }
    double share = (level - upward[i]) / (upward[i + 1] - upward[i]);
    return log.seconds(i) + share * (log.seconds(i + 1) - log.seconds(i));
  }
}
