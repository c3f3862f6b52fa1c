package org.drysill.options.effect;

import org.drysill.physics.Range;
import org.drysill.physics.flow.CombinedFlow;

/**
 * The home as one well-mixed zone in a steady state.
 *
 * <pre>
 * excess = G / Q          excess' = excess · (G' / G) · (Q / Q')
 * Q = Qb + √(Qu² + Qi²)   (mechanical flows and infiltration in quadrature)
 * </pre>
 *
 * <p>G water given off [kg/s], Q outdoor air [m³/s]; primed with the measure. Only ratios enter, so
 * that the excess that was measured carries the result.
 *
 * <p>Limits: no rooms (a fan in the bathroom counts for the bedroom too), no buffering by furniture
 * and walls, no change from month to month, no window opened more or less because of the measure,
 * no condensate on glass as a sink. The ends pair the least air that is there with the most that
 * the measure adds, and the other way round; that is wider than chance would have it.
 *
 * @param supply air blown in by fans today [m³/s]
 * @param extract air taken out by fans today [m³/s]
 * @param infiltration air through leaks while no unbalanced fan runs [m³/s]
 */
record SteadyZone(Range supply, Range extract, Range infiltration) {

  /** Outdoor air with a change of flows [m³/s]. */
  Range outdoorAir(FlowChange change) {
    return ordered(
        at(Range::low, Range::low, change),
        at(Range::likely, Range::likely, change),
        at(Range::high, Range::high, change));
  }

  /** Air that a change of flows adds, averaged over time [m³/s]. */
  Range addedAir(FlowChange change) {
    return ordered(
        difference(Range::high, Range::low, change),
        difference(Range::likely, Range::likely, change),
        difference(Range::low, Range::high, change));
  }

  /** Q / Q' [1]; the vapour excess is multiplied by it. */
  Range dilution(FlowChange change) {
    return ordered(
        ratio(Range::low, Range::high, change),
        ratio(Range::likely, Range::likely, change),
        ratio(Range::high, Range::low, change));
  }

  private double difference(End base, End added, FlowChange change) {
    return at(base, added, change) - at(base, added, FlowChange.NONE);
  }

  private double ratio(End base, End added, FlowChange change) {
    double after = at(base, added, change);
    return after > 0 ? at(base, added, FlowChange.NONE) / after : 1;
  }

  private double at(End base, End added, FlowChange change) {
    return CombinedFlow.totalM3S(
        left(base, supply, change.supplyRemoved()) + added.of(change.supply()),
        left(base, extract, change.extractRemoved()) + added.of(change.extract()),
        base.of(infiltration) + added.of(change.infiltration()));
  }

  private static double left(End base, Range flow, Range removed) {
    return Math.max(0, base.of(flow) - base.of(removed));
  }

  /** A range of three values that may come in any order; the likely one is kept. */
  static Range ordered(double a, double likely, double b) {
    return new Range(Math.min(likely, Math.min(a, b)), likely, Math.max(likely, Math.max(a, b)));
  }

  /** One end of a range. */
  private interface End {
    double of(Range range);
  }
}
