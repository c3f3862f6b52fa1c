package org.drysill.physics.recovery.cycle;

import java.util.Optional;

/**
 * The turns as the flow shows them, where it was logged: it stands still at both.
 *
 * @param judgedFrom the judged air begins [s], relative to the mark
 * @param pauseS how long the air stands still before it [s]
 */
record FlowPauses(double judgedFrom, double pauseS) {
  /** A flow below this share of its median stands still. */
  private static final double STILL = 0.3;

  private static final double FROM = 0.15;
  private static final double TO = 0.74;

  /** Empty where the flow does not stand still within the part of the cycle away from the mark. */
  static Optional<FlowPauses> in(Curve curve, double cycleS) {
    double[] air = new double[curve.size()];
    for (int i = 0; i < air.length; i++) {
      air[i] = curve.air(i);
    }
    double still = STILL * Medians.of(air);
    int first = -1;
    int last = -1;
    for (int i = 0; i < curve.size(); i++) {
      boolean within = curve.offset(i) > FROM * cycleS && curve.offset(i) < TO * cycleS;
      if (within && air[i] < still) {
        first = first < 0 ? i : first;
        last = i;
      }
    }
    return first < 0
        ? Optional.empty()
        : Optional.of(
            new FlowPauses(
                curve.offset(last) + curve.binS() / 2,
                curve.offset(last) - curve.offset(first) + curve.binS()));
  }
}
