package org.drysill.physics.recovery.cycle;

/**
 * The time constant of a thermometer of first order from its own answer: after the turn the air
 * before the face reaches it all at once, and it follows.
 *
 * <pre>r(u) = a − c·exp(−u/τ)</pre>
 *
 * <p>u time since the turn [s], τ time constant [s], a where it comes to rest [1]. Least squares, a
 * and c linear for each τ.
 *
 * @param lagS τ [s]
 * @param rest a
 * @param depth c, how far below it is at the turn
 */
record LagFit(double lagS, double rest, double depth) {
  private static final int LEAST_POINTS = 4;
  private static final int TRIALS = 60;

  /**
   * Fits the curve from the turn to a later time, among time constants between two bounds [s].
   *
   * @param halfWay ratio at the turn itself, which is where the curve is half way
   */
  static LagFit of(Curve curve, double halfWay, double until, double shortestS, double longestS) {
    LagFit best = new LagFit(shortestS, 1, 0);
    double least = Double.POSITIVE_INFINITY;
    double factor = Math.pow(longestS / shortestS, 1.0 / TRIALS);
    for (double lag = shortestS; lag <= longestS * 1.0001; lag *= factor) {
      Sums sums = new Sums();
      sums.add(1, halfWay, curve.count(0));
      for (int i = 0; i < curve.size(); i++) {
        if (curve.offset(i) >= 0 && curve.offset(i) <= until) {
          sums.add(Math.exp(-curve.offset(i) / lag), curve.ratio(i), curve.count(i));
        }
      }
      if (sums.points >= LEAST_POINTS && sums.residual() < least) {
        least = sums.residual();
        best = new LagFit(lag, sums.rest(), -sums.slope());
      }
    }
    return best;
  }

  /** When, on its way, it stood at a level; 0 at the turn, negative before. */
  double when(double level) {
    double share = (rest - level) / depth;
    return depth > 0 && share > 0 ? -lagS * Math.log(share) : 0;
  }

  /** Sums of a weighted straight line. */
  private static final class Sums {
    private int points;
    private double w;
    private double wx;
    private double wy;
    private double wxx;
    private double wxy;
    private double wyy;

    void add(double x, double y, double weight) {
      points++;
      w += weight;
      wx += weight * x;
      wy += weight * y;
      wxx += weight * x * x;
      wxy += weight * x * y;
      wyy += weight * y * y;
    }

    double slope() {
      return (wxy - wx * wy / w) / (wxx - wx * wx / w);
    }

    double rest() {
      return (wy - slope() * wx) / w;
    }

    double residual() {
      return wyy - wy * wy / w - slope() * (wxy - wx * wy / w);
    }
  }
}
