package org.drysill.physics.zones;

import java.util.Arrays;
import java.util.List;

/** The panes of homes side by side, and in which of them each is wet. */
final class LanePanes {
  private static final int NONE = -1;

  private final double[][] steady;
  private final int[] at;
  private final int[] firstAt;
  private final double[][] transfer;
  private final double[] most;
  private final boolean[] mayBeWet;

  /** What each pane takes now: its transfer in homes in which it is wet, else 0. */
  private final double[][] takes;

  private final double[] turned;

  /**
   * Dry panes.
   *
   * @param steady v∞ by place
   */
  LanePanes(Elimination order, List<LaneHome> homes, double[][] steady) {
    this.steady = steady;
    List<Pane> panes = homes.get(0).panes;
    at = panes.stream().mapToInt(p -> order.place(p.zone())).toArray();
    firstAt = new int[steady.length];
    Arrays.fill(firstAt, NONE);
    for (int p = at.length - 1; p >= 0; p--) {
      firstAt[at[p]] = p;
    }
    most = Arrays.stream(at).mapToDouble(k -> Arrays.stream(steady[k]).max().orElse(0)).toArray();
    mayBeWet = new boolean[at.length];
    takes = new double[at.length][homes.size()];
    transfer = new double[at.length][homes.size()];
    for (int p = 0; p < at.length; p++) {
      for (int l = 0; l < homes.size(); l++) {
        transfer[p][l] = homes.get(l).panes.get(p).transferM3S();
      }
    }
    turned = new double[homes.size()];
  }

  int number() {
    return at.length;
  }

  /** The most that the zone of a pane holds in any home [kg/m³]. */
  double most(int pane) {
    return most[pane];
  }

  /**
   * Guesses which are wet after a step in which the departures d go on as in the step before. Those
   * that no home can wet are dry, and are left aside until the next guess.
   */
  void guess(double[][] d, double[][] before, double[] saturation, int from) {
    for (int p = 0; p < at.length; p++) {
      int k = at[p];
      double vs = saturation[from + p];
      boolean may = most[p] > vs;
      if (may) {
        LaneLoops.guess(steady[k], d[k], before[k], vs, transfer[p], takes[p]);
      } else if (mayBeWet[p]) {
        Arrays.fill(takes[p], 0);
      }
      mayBeWet[p] = may;
    }
  }

  /** Adds what the wet ones take from the zones: to the diagonal, and from right-hand sides. */
  void take(double[] saturation, int from, double[][] diagonal, double[][] x) {
    for (int p = 0; p < at.length; p++) {
      int k = at[p];
      if (mayBeWet[p] && firstAt[k] != p) {
        LaneLoops.take(takes[p], steady[k], saturation[from + p], diagonal[k], x[k]);
      }
    }
  }

  /**
   * Loads a zone with its stores and its first pane, which saves a loop over most zones.
   *
   * @param k the place of the zone
   * @param given its diagonal without either
   * @param store what it stores by Δt [m³/s]
   * @param d its departure
   */
  void load(
      int k,
      double[] given,
      double store,
      double[] d,
      double[] saturation,
      int from,
      double[] diagonal,
      double[] x) {
    int p = firstAt[k];
    if (p != NONE && mayBeWet[p]) {
      LaneLoops.load(given, store, d, takes[p], steady[k], saturation[from + p], diagonal, x);
    } else {
      LaneLoops.load(given, store, d, diagonal, x);
    }
  }

  /**
   * Turns panes wet or dry by the departures; true where any was turned in any home.
   *
   * @param mayWet false after the first pass, when panes only dry
   */
  boolean turn(double[][] d, double[] saturation, int from, boolean mayWet) {
    Arrays.fill(turned, 0);
    for (int p = 0; p < at.length; p++) {
      if (mayBeWet[p]) {
        int k = at[p];
        double[] atMost = mayWet ? transfer[p] : takes[p];
        LaneLoops.turn(steady[k], d[k], saturation[from + p], atMost, takes[p], turned);
      }
    }
    return LaneLoops.isAny(turned);
  }
}
