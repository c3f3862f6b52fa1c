package org.drysill.physics.zones;

import java.util.Arrays;
import org.drysill.physics.Bounds;

/**
 * Air between zones and outdoors, time-averaged, all flows at one density.
 *
 * <pre>qe(i) + Σ_j q(j, i) = qo(i) + Σ_j q(i, j)     for every zone i</pre>
 *
 * <p>q(i, j) flow from zone i into zone j, qe(i) from outdoors into zone i, qo(i) from zone i to
 * outdoors [m³/s]. Balanced to 10⁻⁹ of all that comes in. The air of every zone finds a way
 * outdoors, so that the vapour of each is determined.
 */
public final class ZoneFlows {
  private static final double BALANCE = 1e-9;

  private final double[][] between;
  private final double[] in;
  private final double[] out;
  private final double[] leaving;

  /**
   * The flows.
   *
   * @param between q(i, j) [m³/s]; the diagonal is 0
   * @param in qe(i) [m³/s]
   * @param out qo(i) [m³/s]
   * @throws IllegalArgumentException where a flow is negative, a zone not in balance, or a zone
   *     without any way outdoors
   */
  public ZoneFlows(double[][] between, double[] in, double[] out) {
    this.between = Arrays.stream(between).map(double[]::clone).toArray(double[][]::new);
    this.in = in.clone();
    this.out = out.clone();
    checkSizes();
    this.leaving = out.clone();
    double[] coming = in.clone();
    for (int i = 0; i < in.length; i++) {
      for (int j = 0; j < in.length; j++) {
        leaving[i] += between[i][j];
        coming[j] += between[i][j];
      }
    }
    checkBalance(coming);
    checkWays();
  }

  /** Number of zones. */
  public int zones() {
    return in.length;
  }

  /** q(i, j), from one zone into another [m³/s]. */
  public double between(int from, int to) {
    return between[from][to];
  }

  /** qe(i), from outdoors into a zone [m³/s]. */
  public double in(int zone) {
    return in[zone];
  }

  /** qo(i), from a zone to outdoors [m³/s]. */
  public double out(int zone) {
    return out[zone];
  }

  /** All that leaves a zone [m³/s]. */
  public double leaving(int zone) {
    return leaving[zone];
  }

  /** All outdoor air that comes in [m³/s]. */
  public double outdoorAir() {
    return Arrays.stream(in).sum();
  }

  /** The matrix of the vapour balance by rows: what leaves on the diagonal, less what comes. */
  double[] matrix() {
    int n = zones();
    double[] matrix = new double[n * n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        matrix[i * n + j] = i == j ? leaving(i) : -between[j][i];
      }
    }
    return matrix;
  }

  private void checkSizes() {
    Bounds.inside("zones", in.length, 1, 1000);
    Bounds.inside("flows to outdoors", out.length, in.length, in.length);
    Bounds.inside("rows of flows between zones", between.length, in.length, in.length);
    for (int i = 0; i < in.length; i++) {
      Bounds.inside("flows of a zone", between[i].length, in.length, in.length);
      Bounds.inside("flow of a zone into itself [m³/s]", between[i][i], 0, 0);
      Bounds.atLeast("flow from outdoors [m³/s]", in[i], 0);
      Bounds.atLeast("flow to outdoors [m³/s]", out[i], 0);
      for (double flow : between[i]) {
        Bounds.atLeast("flow between zones [m³/s]", flow, 0);
      }
    }
  }

  private void checkBalance(double[] coming) {
    double all = Arrays.stream(leaving).sum();
    for (int i = 0; i < zones(); i++) {
      if (Math.abs(coming[i] - leaving[i]) > BALANCE * all) {
        throw new IllegalArgumentException(
            "zone " + i + " gets " + coming[i] + " m³/s and gives " + leaving[i]);
      }
    }
  }

  /**
   * Marks zones from which air gets outdoors, directly or through marked ones, until none joins.
   */
  private void checkWays() {
    boolean[] open = new boolean[zones()];
    boolean more = true;
    while (more) {
      more = false;
      for (int i = 0; i < zones(); i++) {
        if (!open[i] && hasWay(i, open)) {
          open[i] = true;
          more = true;
        }
      }
    }
    for (int i = 0; i < zones(); i++) {
      if (!open[i]) {
        throw new IllegalArgumentException("the air of zone " + i + " has no way outdoors");
      }
    }
  }

  private boolean hasWay(int zone, boolean[] open) {
    boolean way = out[zone] > 0;
    for (int j = 0; j < zones(); j++) {
      way |= open[j] && between[zone][j] > 0;
    }
    return way;
  }
}
