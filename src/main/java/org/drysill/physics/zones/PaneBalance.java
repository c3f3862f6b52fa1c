package org.drysill.physics.zones;

import java.util.Arrays;
import java.util.List;
import org.drysill.physics.Bounds;

/**
 * The balance A v + Σ k·max(0; v − vs) = b with an M-matrix A, solved by Newton's method on the set
 * of panes that are wet.
 *
 * <p>The left side is convex and its slopes are M-matrices, so that from the second pass on the
 * contents only fall and panes only dry: after at most one pass a pane it is done. The wet set and
 * its factors are kept from one solution to the next, which mostly has the same; nothing is
 * allocated.
 */
final class PaneBalance {
  private final double[] matrix;
  private final int[] zone;
  private final double[] transfer;
  private final boolean[] wet;
  private final double[] added;
  private final Factors factors;

  PaneBalance(double[] matrix, int zones, List<Pane> panes) {
    this.matrix = matrix;
    zone = panes.stream().mapToInt(Pane::zone).toArray();
    transfer = panes.stream().mapToDouble(Pane::transferM3S).toArray();
    for (int z : zone) {
      Bounds.inside("zone of a pane", z, 0, zones - 1);
    }
    wet = new boolean[zone.length];
    added = new double[zones];
    factors = new Factors(zones);
    factorise();
  }

  /**
   * Solves for the contents.
   *
   * @param load b [kg/s]
   * @param saturation vs of each pane [kg/m³]
   * @param content v [kg/m³], filled
   */
  void solve(double[] load, double[] saturation, double[] content) {
    pass(load, saturation, content);
    boolean mayWet = true;
    while (turn(saturation, content, mayWet)) {
      mayWet = false;
      factorise();
      pass(load, saturation, content);
    }
  }

  /** What settles on a pane [kg/s] at the contents of the last solution. */
  double settling(int pane, double[] content, double saturation) {
    return transfer[pane] * Math.max(0, content[zone[pane]] - saturation);
  }

  private void pass(double[] load, double[] saturation, double[] content) {
    System.arraycopy(load, 0, content, 0, content.length);
    for (int p = 0; p < zone.length; p++) {
      if (wet[p]) {
        content[zone[p]] += transfer[p] * saturation[p];
      }
    }
    factors.solve(content);
  }

  /** Turns panes wet or dry by the contents; true where any was turned. */
  private boolean turn(double[] saturation, double[] content, boolean mayWet) {
    boolean turned = false;
    for (int p = 0; p < zone.length; p++) {
      boolean is = content[zone[p]] > saturation[p] && (mayWet || wet[p]);
      turned |= is != wet[p];
      wet[p] = is;
    }
    return turned;
  }

  private void factorise() {
    Arrays.fill(added, 0);
    for (int p = 0; p < zone.length; p++) {
      if (wet[p]) {
        added[zone[p]] += transfer[p];
      }
    }
    factors.factorise(matrix, added);
  }
}
