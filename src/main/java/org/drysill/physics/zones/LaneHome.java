package org.drysill.physics.zones;

import java.util.List;
import org.drysill.physics.Bounds;

/** One of the homes that stand side by side in {@link ExcessLanes}. */
public final class LaneHome {
  final ZoneFlows flows;
  final List<Pane> panes;
  final double[] production;

  /**
   * A home.
   *
   * @param flows its air
   * @param panes its cold surfaces
   * @param production G of each zone [kg/s], at least 0
   */
  public LaneHome(ZoneFlows flows, List<Pane> panes, double[] production) {
    Bounds.inside("zones with a production", production.length, flows.zones(), flows.zones());
    for (Pane pane : panes) {
      Bounds.inside("zone of a pane", pane.zone(), 0, flows.zones() - 1);
    }
    this.flows = flows;
    this.panes = List.copyOf(panes);
    this.production = production.clone();
  }
}
