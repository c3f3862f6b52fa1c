package org.drysill.physics.recovery.cycle;

/**
 * Finds in the folded curve where the air turns. Units turn after equal times, so the judged half
 * begins half a cycle after the other, unless the flow was logged and says otherwise, or the
 * temperature clearly begins to fall earlier: before judged air flows it cannot.
 */
final class TurnPlaceFinder {
  /** A pause of fewer bins than this does not stand out. */
  private static final double SEEN_BINS = 3;

  private static final double LAG_UNTIL = 0.4;
  private static final double LAG_AT_LEAST = 0.15;
  private static final double LONGEST_LAG = 0.5;
  private static final double SHORTEST_LAG_BINS = 0.25;
  private static final double PAUSE_WITHIN = 0.2;

  private final Curve curve;
  private final double cycleS;
  private final CycleRules rules;

  TurnPlaceFinder(Curve curve, double cycleS, CycleRules rules) {
    this.curve = curve;
    this.cycleS = cycleS;
    this.rules = rules;
  }

  TurnPlaces find() {
    int lowest = lowest();
    LagFit lag =
        LagFit.of(
            curve,
            (curve.smooth(lowest) + curve.highest()) / 2,
            lagUntil(),
            SHORTEST_LAG_BINS * curve.binS(),
            LONGEST_LAG * cycleS);
    double otherFrom = Math.min(0, Math.max(lag.when(curve.smooth(lowest)), curve.offset(lowest)));
    return FlowPauses.in(curve, cycleS)
        .map(p -> new TurnPlaces(otherFrom, p.judgedFrom(), p.pauseS(), lag.lagS(), false))
        .orElseGet(() -> byTemperature(lag.lagS(), otherFrom, lowest));
  }

  /** The curve is fitted while it rises, or over most of a half-cycle where it rests for long. */
  private double lagUntil() {
    double highest = curve.highest();
    double peak = 0;
    for (int i = 0; i < curve.size(); i++) {
      peak = curve.smooth(i) == highest ? curve.offset(i) : peak;
    }
    return Math.min(LAG_UNTIL * cycleS, Math.max(LAG_AT_LEAST * cycleS, peak));
  }

  private TurnPlaces byTemperature(double lagS, double otherFrom, int lowest) {
    double gap = otherFrom - curve.offset(lowest);
    double pause = gap >= SEEN_BINS * curve.binS() ? gap : 0;
    double half = cycleS / 2;
    double even = otherFrom + half;
    double knee = knee(otherFrom, curve.smooth(lowest));
    boolean equal = knee > even - rules.unequal() * half;
    return new TurnPlaces(otherFrom, equal ? even : knee, pause, lagS, equal);
  }

  /** The bin just before the turn in which the temperature is lowest. */
  private int lowest() {
    int lowest = 0;
    for (int i = 1; i < curve.size() && curve.offset(i) <= 0; i++) {
      boolean near = curve.offset(lowest) < -PAUSE_WITHIN * cycleS;
      lowest = near || curve.smooth(i) <= curve.smooth(lowest) ? i : lowest;
    }
    return lowest;
  }

  /**
   * Where the curve stands highest above the straight line from the end of its rise to the end of
   * its fall.
   */
  private double knee(double otherFrom, double end) {
    double from = cycleS / 4;
    double to = cycleS + otherFrom;
    int first = 0;
    while (first < curve.size() - 1 && curve.offset(first) < from) {
      first++;
    }
    double start = curve.smooth(first);
    double best = curve.offset(first);
    double most = 0;
    for (int i = first; i < curve.size(); i++) {
      double share = (curve.offset(i) - curve.offset(first)) / (to - curve.offset(first));
      double above = curve.smooth(i) - (start + share * (end - start));
      if (above > most) {
        most = above;
        best = curve.offset(i);
      }
    }
    return best;
  }
}
