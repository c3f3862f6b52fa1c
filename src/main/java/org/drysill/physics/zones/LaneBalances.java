package org.drysill.physics.zones;

import java.util.List;

/**
 * Balances of the same zones in many homes that differ in flows, side by side: each home is a lane,
 * a row has one value a lane.
 *
 * <pre>(A + D) x = b</pre>
 *
 * <p>A balance of the flows, D a diagonal that is at least 0. Gaussian elimination in the order of
 * {@link Elimination}; as in {@link Factors} no pivot is looked for. A lane's solution does not
 * depend on what stands beside it.
 */
final class LaneBalances {
  private final Elimination order;
  private final double[][] given;
  private final double[][] below;
  private final double[][] above;
  private final boolean[] changes;
  private final double[][] belowNow;
  private final double[][] aboveNow;

  /**
   * The balances.
   *
   * @param flows of each lane
   */
  LaneBalances(Elimination order, List<ZoneFlows> flows) {
    this.order = order;
    int n = order.zones();
    int lanes = flows.size();
    given = new double[n][lanes];
    below = new double[order.links()][lanes];
    above = new double[order.links()][lanes];
    for (int k = 0; k < n; k++) {
      int zone = order.zone(k);
      int[] after = order.after(k);
      for (int l = 0; l < lanes; l++) {
        ZoneFlows of = flows.get(l);
        given[k][l] = of.leaving(zone);
        for (int a = 0; a < after.length; a++) {
          int other = order.zone(after[a]);
          below[order.link(k, a)][l] = -of.between(zone, other);
          above[order.link(k, a)][l] = -of.between(other, zone);
        }
      }
    }
    changes = changes(order);
    belowNow = now(below);
    aboveNow = now(above);
  }

  /** Links that the elimination of a zone before them changes: in loops of doors alone. */
  private static boolean[] changes(Elimination order) {
    boolean[] changes = new boolean[order.links()];
    for (int k = 0; k < order.zones(); k++) {
      int[] after = order.after(k);
      for (int a = 0; a < after.length; a++) {
        for (int b = a + 1; b < after.length; b++) {
          changes[order.between(after[a], after[b])] = true;
        }
      }
    }
    return changes;
  }

  /** Rows of their own for what changes, the same rows for what does not. */
  private double[][] now(double[][] rows) {
    double[][] now = rows.clone();
    for (int e = 0; e < now.length; e++) {
      now[e] = changes[e] ? rows[e].clone() : rows[e];
    }
    return now;
  }

  /** The diagonal of A at a place. */
  double[] diagonal(int at) {
    return given[at];
  }

  /**
   * Replaces right-hand sides by solutions.
   *
   * @param diagonal that of A + D by place, replaced by the inverse pivots
   * @param x b by place, replaced by x
   */
  void solve(double[][] diagonal, double[][] x) {
    int n = order.zones();
    for (int e = 0; e < changes.length; e++) {
      if (changes[e]) {
        System.arraycopy(below[e], 0, belowNow[e], 0, below[e].length);
        System.arraycopy(above[e], 0, aboveNow[e], 0, above[e].length);
      }
    }
    for (int k = 0; k < n; k++) {
      int[] after = order.after(k);
      for (int a = 0; a < after.length; a++) {
        int i = after[a];
        int e = order.link(k, a);
        if (a == 0) {
          LaneLoops.eliminateFirst(belowNow[e], aboveNow[e], diagonal[k], x[k], diagonal[i], x[i]);
        } else {
          LaneLoops.eliminate(belowNow[e], aboveNow[e], diagonal[k], x[k], diagonal[i], x[i]);
        }
        for (int b = a + 1; b < after.length; b++) {
          int with = order.link(k, b);
          int changed = order.between(i, after[b]);
          LaneLoops.eliminate(belowNow[e], aboveNow[with], diagonal[k], aboveNow[changed]);
          LaneLoops.eliminate(belowNow[with], aboveNow[e], diagonal[k], belowNow[changed]);
        }
      }
    }
    for (int k = n - 1; k >= 0; k--) {
      int[] after = order.after(k);
      int last = after.length - 1;
      if (last < 0) {
        LaneLoops.divide(diagonal[k], x[k]);
      } else {
        for (int a = 0; a < last; a++) {
          LaneLoops.substitute(aboveNow[order.link(k, a)], x[after[a]], x[k]);
        }
        LaneLoops.substituteLast(aboveNow[order.link(k, last)], x[after[last]], diagonal[k], x[k]);
      }
    }
  }
}
