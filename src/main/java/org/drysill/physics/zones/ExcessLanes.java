package org.drysill.physics.zones;

import java.util.Arrays;
import java.util.List;
import org.drysill.physics.Bounds;

/**
 * Vapour excess over outdoors of zones whose flows and production stay the same, step by step, in
 * many homes side by side: the recurrence of {@link ZoneSteps} with nothing outdoors. Homes have
 * the same zones, stores and places of panes; flows, production and transfers may differ.
 *
 * <pre>
 * v = v∞ + d,   A v∞ = G
 * (A + S + Σ_wet k) d' = S d − Σ_wet k (v∞ − vs)
 * </pre>
 *
 * <p>A balance of the flows, S = M V/Δt stores, v∞ the steady state without panes [kg/m³], d what
 * panes have taken from it: never above 0, because panes only take. While panes are dry d fades by
 * itself, so that many steps are one product.
 *
 * <p>Which panes are wet is found as in {@link PaneBalance}, first guessed from the contents before
 * the step: any guess leads to the same, since with fewer panes or more the balance takes at most
 * what it takes in truth. All homes go through as many passes as the one that needs the most, which
 * changes nothing in the others; what becomes of a home does not depend on those beside it. Nothing
 * is allocated from step to step. Not for two threads at once.
 */
public final class ExcessLanes {
  /** Of the steady state; what is left of d then lies below the rounding of the steps. */
  private static final double FADED = 1e-13;

  private final int n;
  private final int lanes;
  private final Elimination order;
  private final LaneBalances balances;
  private final double[] stores;
  private final double[][] steady;
  private final LanePanes panes;
  private final double[][] fading;
  private final double[][] diagonal;
  private double[][] departure;
  private double[][] next;

  /**
   * Homes at their steady state without panes.
   *
   * @param homes at least one, with the same zones and with panes in the same places
   * @param storesM3 M·V of each zone, above 0
   * @param stepSeconds Δt, above 0
   * @param many how many steps {@link #skip()} takes at once
   */
  public ExcessLanes(List<LaneHome> homes, double[] storesM3, double stepSeconds, int many) {
    Bounds.above("time step [s]", stepSeconds, 0);
    List<ZoneFlows> flows = homes.stream().map(h -> h.flows).toList();
    order = new Elimination(flows);
    n = order.zones();
    lanes = homes.size();
    Bounds.inside("zones with a store", storesM3.length, n, n);
    balances = new LaneBalances(order, flows);
    stores = new double[n];
    steady = new double[n][lanes];
    diagonal = new double[n][lanes];
    departure = new double[n][lanes];
    next = new double[n][lanes];
    for (int k = 0; k < n; k++) {
      int zone = order.zone(k);
      stores[k] = Bounds.above("store of a zone [m³]", storesM3[zone], 0) / stepSeconds;
      System.arraycopy(balances.diagonal(k), 0, diagonal[k], 0, lanes);
      Arrays.setAll(steady[k], l -> homes.get(l).production[zone]);
    }
    balances.solve(diagonal, steady);
    panes = new LanePanes(order, homes, steady);
    fading = fading((int) Bounds.inside("steps at once", many, 1, 1000));
  }

  /** Back to the steady state without panes. */
  public void restart() {
    for (double[] row : departure) {
      Arrays.fill(row, 0);
    }
  }

  /** Number of zones. */
  public int zones() {
    return n;
  }

  /** Number of homes. */
  public int lanes() {
    return lanes;
  }

  /**
   * Contents of a zone after the last step [kg/m³].
   *
   * @param into filled, a value a home
   */
  public void contents(int zone, double[] into) {
    int k = order.place(zone);
    LaneLoops.content(steady[k], departure[k], into);
  }

  /** Content of a zone of a home in the steady state without panes [kg/m³]: it never holds more. */
  public double most(int zone, int lane) {
    return steady[order.place(zone)][lane];
  }

  /** Number of panes. */
  public int panes() {
    return panes.number();
  }

  /** The most that the zone of a pane holds in any home [kg/m³]. */
  public double mostAtPane(int pane) {
    return panes.most(pane);
  }

  /** True where all homes are at their steady state without panes. */
  public boolean isSteady() {
    for (double[] row : departure) {
      if (LaneLoops.isAny(row)) {
        return false;
      }
    }
    return true;
  }

  /**
   * One step.
   *
   * @param saturation vs of each pane, the same in all homes, hour by hour [kg/m³]
   * @param from where those of the hour begin
   */
  public void step(double[] saturation, int from) {
    panes.guess(departure, next, saturation, from);
    solve(saturation, from);
    boolean mayWet = true;
    while (panes.turn(next, saturation, from, mayWet)) {
      mayWet = false;
      solve(saturation, from);
    }
    advance();
  }

  /** One step in which no pane can be wet. */
  public void step() {
    fade();
    settle();
  }

  /** Many steps in which no pane can be wet. */
  public void skip() {
    for (int i = 0; i < n; i++) {
      Arrays.fill(next[i], 0);
      for (int j = 0; j < n; j++) {
        LaneLoops.add(fading[i * n + j], departure[j], next[i]);
      }
    }
    advance();
    settle();
  }

  private void advance() {
    double[][] before = departure;
    departure = next;
    next = before;
  }

  /** Without wet panes. */
  private void fade() {
    for (int k = 0; k < n; k++) {
      LaneLoops.load(balances.diagonal(k), stores[k], departure[k], diagonal[k], next[k]);
    }
    balances.solve(diagonal, next);
    advance();
  }

  /** With the panes that are wet now. */
  private void solve(double[] saturation, int from) {
    for (int k = 0; k < n; k++) {
      double[] given = balances.diagonal(k);
      panes.load(k, given, stores[k], departure[k], saturation, from, diagonal[k], next[k]);
    }
    panes.take(saturation, from, diagonal, next);
    balances.solve(diagonal, next);
  }

  /** Nothing is left of d once it has faded in all homes. */
  private void settle() {
    for (int k = 0; k < n; k++) {
      for (int l = 0; l < lanes; l++) {
        if (departure[k][l] < -FADED * steady[k][l]) {
          return;
        }
      }
    }
    restart();
  }

  /** What so many dry steps leave of a departure in each zone: n × n rows. */
  private double[][] fading(int steps) {
    double[][] fading = new double[n * n][lanes];
    for (int j = 0; j < n; j++) {
      restart();
      Arrays.fill(departure[j], 1);
      for (int s = 0; s < steps; s++) {
        fade();
      }
      for (int i = 0; i < n; i++) {
        System.arraycopy(departure[i], 0, fading[i * n + j], 0, lanes);
      }
    }
    restart();
    return fading;
  }
}
