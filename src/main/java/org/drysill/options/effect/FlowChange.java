package org.drysill.options.effect;

import org.drysill.physics.Range;

/**
 * How a measure changes the flows of a home, averaged over time.
 *
 * @param supply blown in more [m³/s]
 * @param extract taken out more [m³/s]
 * @param infiltration through openings more [m³/s]
 * @param supplyRemoved of today's supply that it takes the place of [m³/s]
 * @param extractRemoved of today's extract that it takes the place of [m³/s]
 */
record FlowChange(
    Range supply, Range extract, Range infiltration, Range supplyRemoved, Range extractRemoved) {
  private static final Range ZERO = Range.exactly(0);

  static final FlowChange NONE = new FlowChange(ZERO, ZERO, ZERO, ZERO, ZERO);

  static FlowChange supplying(Range flow) {
    return new FlowChange(flow, ZERO, ZERO, ZERO, ZERO);
  }

  static FlowChange extracting(Range flow, Range removed) {
    return new FlowChange(ZERO, flow, ZERO, ZERO, removed);
  }

  static FlowChange exchanging(Range flow, Range supplyRemoved, Range extractRemoved) {
    return new FlowChange(flow, flow, ZERO, supplyRemoved, extractRemoved);
  }

  static FlowChange infiltrating(Range flow) {
    return new FlowChange(ZERO, ZERO, flow, ZERO, ZERO);
  }
}
