package org.drysill.physics.recovery.cycle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How far readings swing within a few cycles, and how much they scatter.
 *
 * @param kelvin from low to high within a stretch, the wildest readings aside [K]
 * @param scatter standard deviation of a reading [K]
 */
record Swing(double kelvin, double scatter) {
  /** Long enough for a whole cycle of the slowest units, short enough for indoor air to stay. */
  private static final double STRETCH_S = 1200;

  private static final double WILDEST = 0.05;

  /** Thermometers with one decimal hide a scatter of this size [K]. */
  private static final double HIDDEN = 0.03;

  /** A middle reading less the mean of its neighbours scatters by √1.5 of a reading. */
  private static final double OF_THREE = Math.sqrt(1.5);

  static Swing of(FaceLog log) {
    List<Double> ranges = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= log.size(); i++) {
      if (i == log.size() || log.seconds(i) - log.seconds(from) > STRETCH_S) {
        double[] stretch = Arrays.copyOfRange(log.faces(), from, i);
        ranges.add(Medians.share(stretch, 1 - WILDEST) - Medians.share(stretch, WILDEST));
        from = i;
      }
    }
    return new Swing(
        Medians.of(ranges.stream().mapToDouble(r -> r).toArray()),
        Math.max(HIDDEN, scatter(log.faces())));
  }

  private static double scatter(double[] face) {
    double[] off = new double[face.length - 2];
    for (int i = 0; i < off.length; i++) {
      off[i] = face[i + 1] - (face[i] + face[i + 2]) / 2;
    }
    return Medians.deviation(off, 0) / OF_THREE;
  }
}
