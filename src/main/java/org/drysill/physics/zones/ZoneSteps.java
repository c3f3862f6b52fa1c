package org.drysill.physics.zones;

import java.util.List;
import java.util.stream.IntStream;
import org.drysill.physics.Bounds;

/**
 * Vapour of zones step by step, implicit Euler.
 *
 * <pre>M V (v(t+1) − v(t)) / Δt = G + qe ve − what leaves with air and settles, all at t+1</pre>
 *
 * <p>M effective capacitance multiplier [1] by which furniture and plaster widen the air's store, V
 * volume [m³]; the rest as in {@link SteadyZones}. Stable for any step; water is conserved in each
 * step to rounding. The air flows may have several states, such as a fan on or off; each is
 * factorised once, and again only when a pane turns wet or dry. A step allocates nothing. Not for
 * two threads at once.
 */
public final class ZoneSteps {
  private final double[][] in;
  private final PaneBalance[] balances;
  private final double[] capacity;
  private final double[] content;
  private final double[] load;
  private final double[] settling;

  /**
   * Zones without vapour; {@link #start} gives them some.
   *
   * @param states the states of the air flows, all of the same zones
   * @param storesM3 M·V of each zone, above 0
   * @param panes cold surfaces
   * @param stepSeconds Δt, above 0
   */
  public ZoneSteps(
      List<ZoneFlows> states, double[] storesM3, List<Pane> panes, double stepSeconds) {
    Bounds.above("time step [s]", stepSeconds, 0);
    int zones = storesM3.length;
    capacity = new double[zones];
    for (int i = 0; i < zones; i++) {
      capacity[i] = Bounds.above("store of a zone [m³]", storesM3[i], 0) / stepSeconds;
    }
    in = new double[states.size()][];
    balances = new PaneBalance[states.size()];
    for (int s = 0; s < in.length; s++) {
      ZoneFlows flows = states.get(s);
      Bounds.inside("zones of a state", flows.zones(), zones, zones);
      in[s] = IntStream.range(0, zones).mapToDouble(flows::in).toArray();
      balances[s] = new PaneBalance(withStores(flows.matrix()), zones, panes);
    }
    content = new double[zones];
    load = new double[zones];
    settling = new double[panes.size()];
  }

  /** Sets the contents [kg/m³]. */
  public void start(double[] contents) {
    Bounds.inside("zones to start", contents.length, content.length, content.length);
    System.arraycopy(contents, 0, content, 0, content.length);
  }

  /**
   * One step.
   *
   * @param state which of the states of the air flows holds during it
   * @param production G of each zone [kg/s], at least 0
   * @param outdoorKgM3 ve at its end, at least 0
   * @param saturation vs of each pane [kg/m³]
   */
  public void step(int state, double[] production, double outdoorKgM3, double[] saturation) {
    double[] coming = in[state];
    for (int i = 0; i < load.length; i++) {
      load[i] = capacity[i] * content[i] + production[i] + coming[i] * outdoorKgM3;
    }
    PaneBalance balance = balances[state];
    balance.solve(load, saturation, content);
    for (int p = 0; p < settling.length; p++) {
      settling[p] = balance.settling(p, content, saturation[p]);
    }
  }

  /** Number of zones. */
  public int zones() {
    return content.length;
  }

  /** Number of panes. */
  public int panes() {
    return settling.length;
  }

  /** Content of a zone after the last step [kg/m³]. */
  public double content(int zone) {
    return content[zone];
  }

  /** What settled on a pane during the last step [kg/s]. */
  public double settling(int pane) {
    return settling[pane];
  }

  private double[] withStores(double[] matrix) {
    for (int i = 0; i < capacity.length; i++) {
      matrix[i * capacity.length + i] += capacity[i];
    }
    return matrix;
  }
}
