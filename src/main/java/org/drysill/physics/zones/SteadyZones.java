package org.drysill.physics.zones;

import java.util.List;
import org.drysill.physics.Bounds;

/**
 * Vapour of zones in a steady state, such as the mean of a month.
 *
 * <pre>
 * (qo(i) + Σ_j q(i, j)) v(i) − Σ_j q(j, i) v(j) + Σ_panes k max(0; v(i) − vs) = G(i) + qe(i) ve
 * </pre>
 *
 * <p>v vapour content [kg/m³], q flows [m³/s] of {@link ZoneFlows}, G production [kg/s], ve content
 * outdoors. Well-mixed zones, no storage: stores even out over weeks. One zone without panes is v =
 * ve + G/q. Water is conserved to rounding; more production never means less vapour anywhere. Not
 * for two threads at once.
 */
public final class SteadyZones {
  private final ZoneFlows flows;
  private final int panes;
  private final PaneBalance balance;
  private final double[] load;

  /** Zones with their flows and panes; factorised once. */
  public SteadyZones(ZoneFlows flows, List<Pane> panes) {
    this.flows = flows;
    this.panes = panes.size();
    this.balance = new PaneBalance(flows.matrix(), flows.zones(), panes);
    this.load = new double[flows.zones()];
  }

  /**
   * The steady state.
   *
   * @param production G of each zone [kg/s], at least 0
   * @param outdoorKgM3 ve, at least 0
   * @param saturation vs of each pane [kg/m³]
   */
  public ZoneVapour at(double[] production, double outdoorKgM3, double[] saturation) {
    Bounds.inside("zones with a production", production.length, load.length, load.length);
    Bounds.inside("panes with a saturation", saturation.length, panes, panes);
    Bounds.atLeast("outdoor vapour content [kg/m³]", outdoorKgM3, 0);
    for (int i = 0; i < load.length; i++) {
      load[i] =
          Bounds.atLeast("moisture production [kg/s]", production[i], 0)
              + flows.in(i) * outdoorKgM3;
    }
    double[] content = new double[load.length];
    balance.solve(load, saturation, content);
    double[] settling = new double[panes];
    for (int p = 0; p < panes; p++) {
      settling[p] = balance.settling(p, content, saturation[p]);
    }
    return new ZoneVapour(content, settling);
  }
}
