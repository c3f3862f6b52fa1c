package org.drysill.options.effect;

import java.util.List;
import java.util.function.Function;
import org.drysill.assess.Figure;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.physics.Range;
import org.drysill.reference.measures.AirMove;

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

  /**
   * A new flow and the fans whose place it takes.
   *
   * @param moves which way
   * @param flow the new flow, averaged over time [m³/s]
   * @param replaced the fans that go
   */
  static FlowChange of(AirMove moves, Range flow, List<FanFlow> replaced) {
    Range in = sum(replaced, FanFlow::supply);
    Range out = sum(replaced, FanFlow::extract);
    return switch (moves) {
      case EXTRACT -> new FlowChange(ZERO, flow, ZERO, in, out);
      case SUPPLY -> new FlowChange(flow, ZERO, ZERO, in, out);
      case EXCHANGE -> new FlowChange(flow, flow, ZERO, in, out);
      case INFILTRATION -> new FlowChange(ZERO, ZERO, flow, in, out);
      case TRANSFER -> NONE;
    };
  }

  private static Range sum(List<FanFlow> fans, Function<FanFlow, Figure> flow) {
    return fans.stream().map(flow).map(Figure::value).reduce(ZERO, Range::plus);
  }
}
