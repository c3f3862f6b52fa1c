package org.drysill.physics.zones;

import java.util.Arrays;
import java.util.List;
import org.drysill.physics.Bounds;

/**
 * Vapour excess of zones over outdoors step by step, where flows and production stay the same: the
 * recurrence of {@link ZoneSteps} with nothing outdoors, for many years of many homes.
 *
 * <pre>
 * v = v∞ + d,   A v∞ = G
 * (A + S + Σ_wet k) d' = S d − Σ_wet k (v∞ − vs)
 * </pre>
 *
 * <p>A balance of the flows, S = M V/Δt stores, v∞ the steady state without panes [kg/m³], d what
 * panes have taken from it: never above 0, because panes only take. While panes are dry d fades by
 * itself, so that many steps are one product. Nothing is allocated from step to step. Not for two
 * threads at once.
 */
public final class ExcessSteps {
  /** Of the steady state; what is left of d then lies below the rounding of the steps. */
  private static final double FADED = 1e-13;

  /** Factors of so many sets of wet panes are kept: the same panes are wet night after night. */
  private static final int KNOWN = 32;

  /** Golden ratio of 64 bits, which spreads sets over places. */
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  private static final int MOST_BITS = 63;

  private final int n;
  private final int[] place;
  private final double[] matrix;
  private final double[] stores;
  private final double[] steady;
  private final int[] zone;
  private final double[] transfer;
  private final boolean[] wet;
  private final double[] added;
  private final SparseFactors factors;
  private final SparseFactors.Values dry;
  private final SparseFactors.Values[] known = new SparseFactors.Values[KNOWN];
  private final long[] knownWet = new long[KNOWN];
  private final double[] fadingOfMany;
  private final double[] departure;
  private final double[] load;
  private SparseFactors.Values now;
  private int wetPanes;

  /**
   * Zones at their steady state without panes.
   *
   * @param flows the air flows
   * @param storesM3 M·V of each zone, above 0
   * @param panes cold surfaces
   * @param production G of each zone [kg/s], at least 0
   * @param stepSeconds Δt, above 0
   * @param many how many steps {@link #skip()} takes at once
   */
  public ExcessSteps(
      ZoneFlows flows,
      double[] storesM3,
      List<Pane> panes,
      double[] production,
      double stepSeconds,
      int many) {
    Bounds.above("time step [s]", stepSeconds, 0);
    n = flows.zones();
    Bounds.inside("zones with a store", storesM3.length, n, n);
    Bounds.inside("zones with a production", production.length, n, n);
    double[] balance = flows.matrix();
    factors = new SparseFactors(balance, n);
    dry = factors.values();
    int[] order = factors.order();
    place = new int[n];
    matrix = new double[n * n];
    stores = new double[n];
    steady = new double[n];
    added = new double[n];
    for (int k = 0; k < n; k++) {
      int of = order[k];
      place[of] = k;
      stores[k] = Bounds.above("store of a zone [m³]", storesM3[of], 0) / stepSeconds;
      steady[k] = production[of];
      for (int j = 0; j < n; j++) {
        matrix[k * n + j] = balance[of * n + order[j]];
      }
    }
    factors.factorise(matrix, added, dry);
    factors.solve(dry, steady);
    factors.factorise(matrix, stores, dry);
    now = dry;
    zone = new int[panes.size()];
    transfer = new double[panes.size()];
    for (int p = 0; p < zone.length; p++) {
      int of = panes.get(p).zone();
      Bounds.inside("zone of a pane", of, 0, n - 1);
      zone[p] = place[of];
      transfer[p] = panes.get(p).transferM3S();
    }
    wet = new boolean[zone.length];
    departure = new double[n];
    load = new double[n];
    fadingOfMany = fading((int) Bounds.inside("steps at once", many, 1, 1000));
  }

  /** Back to the steady state without panes. */
  public void restart() {
    Arrays.fill(departure, 0);
    dryAll();
  }

  /** Number of zones. */
  public int zones() {
    return n;
  }

  /** Content of a zone after the last step [kg/m³]. */
  public double content(int of) {
    return at(place[of]);
  }

  /** Content of a zone in the steady state without panes [kg/m³]: it never holds more. */
  public double most(int of) {
    return steady[place[of]];
  }

  /** True where all zones are at their steady state without panes. */
  public boolean isSteady() {
    for (int i = 0; i < n; i++) {
      if (departure[i] != 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * One step.
   *
   * @param saturation vs of each pane, hour by hour [kg/m³]
   * @param from where those of the hour begin
   */
  public void step(double[] saturation, int from) {
    for (int i = 0; i < n; i++) {
      double kept = stores[i] * departure[i];
      load[i] = kept;
      departure[i] = kept;
    }
    solve(saturation, from);
    boolean mayWet = true;
    while (turn(saturation, from, mayWet)) {
      mayWet = false;
      System.arraycopy(load, 0, departure, 0, n);
      solve(saturation, from);
    }
  }

  /** One step in which no pane can be wet. */
  public void step() {
    dryAll();
    for (int i = 0; i < n; i++) {
      departure[i] *= stores[i];
    }
    factors.solve(dry, departure);
    settle();
  }

  /** Many steps in which no pane can be wet. */
  public void skip() {
    dryAll();
    System.arraycopy(departure, 0, load, 0, n);
    for (int i = 0; i < n; i++) {
      double sum = 0;
      for (int j = 0; j < n; j++) {
        sum += fadingOfMany[i * n + j] * load[j];
      }
      departure[i] = sum;
    }
    settle();
  }

  private double at(int i) {
    return steady[i] + departure[i];
  }

  private void settle() {
    boolean faded = true;
    for (int i = 0; i < n; i++) {
      faded &= departure[i] >= -FADED * steady[i];
    }
    if (faded) {
      Arrays.fill(departure, 0);
    }
  }

  /** With the panes that are wet now. */
  private void solve(double[] saturation, int from) {
    if (wetPanes > 0) {
      for (int p = 0; p < zone.length; p++) {
        if (wet[p]) {
          int z = zone[p];
          departure[z] -= transfer[p] * (steady[z] - saturation[from + p]);
        }
      }
    }
    factors.solve(now, departure);
  }

  /**
   * Turns panes wet or dry by the contents; true where any was turned. After the first pass panes
   * only dry, as in {@link PaneBalance}.
   */
  private boolean turn(double[] saturation, int from, boolean mayWet) {
    boolean turned = false;
    for (int p = 0; p < zone.length; p++) {
      boolean is = at(zone[p]) > saturation[from + p] && (mayWet || wet[p]);
      if (is != wet[p]) {
        wet[p] = is;
        wetPanes += is ? 1 : -1;
        turned = true;
      }
    }
    if (turned) {
      now = wetPanes == 0 ? dry : factors();
    }
    return turned;
  }

  /** The factors with the panes that are wet now, found where they are not known. */
  private SparseFactors.Values factors() {
    long set = 0;
    for (int p = 0; p < zone.length; p++) {
      set |= wet[p] ? 1L << p : 0;
    }
    int at = (int) ((set * SPREAD) >>> 59);
    if (knownWet[at] != set || zone.length > MOST_BITS) {
      knownWet[at] = set;
      known[at] = known[at] == null ? factors.values() : known[at];
      System.arraycopy(stores, 0, added, 0, n);
      for (int p = 0; p < zone.length; p++) {
        added[zone[p]] += wet[p] ? transfer[p] : 0;
      }
      factors.factorise(matrix, added, known[at]);
    }
    return known[at];
  }

  private void dryAll() {
    if (wetPanes > 0) {
      Arrays.fill(wet, false);
      wetPanes = 0;
      now = dry;
    }
  }

  /** What so many dry steps leave of a departure in each zone: n × n by rows. */
  private double[] fading(int steps) {
    double[] fading = new double[n * n];
    double[] one = new double[n];
    for (int j = 0; j < n; j++) {
      Arrays.fill(one, 0);
      one[j] = 1;
      for (int s = 0; s < steps; s++) {
        for (int i = 0; i < n; i++) {
          one[i] *= stores[i];
        }
        factors.solve(dry, one);
      }
      for (int i = 0; i < n; i++) {
        fading[i * n + j] = one[i];
      }
    }
    return fading;
  }
}
