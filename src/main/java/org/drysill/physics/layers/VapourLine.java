package org.drysill.physics.layers;

import java.util.Arrays;
import org.drysill.physics.Bounds;

/**
 * Vapour pressure through an element in a steady state, and the water that settles or leaves at its
 * planes; ISO 13788:2012, 6.4 (memory).
 *
 * <p>The line is a string drawn taut from the pressure at one surface to that at the other, under
 * the saturation pressure: the lower convex hull of saturation over sd. Where it touches, vapour
 * turns to water. Where water lies already the pressure is that of saturation, and water may leave.
 *
 * <pre>g(k) = δ0·[ (p(i) − p(k)) / (sd(k) − sd(i)) − (p(k) − p(j)) / (sd(j) − sd(k)) ]</pre>
 *
 * <p>i and j are the neighbours of k among the points that the string touches.
 */
public final class VapourLine {
  /** δ0, vapour permeability of still air [kg/(m·s·Pa)] that the standard takes (memory). */
  public static final double AIR_PERMEABILITY = 2e-10;

  private final double[] pressurePa;
  private final double[] rate;

  private VapourLine(double[] pressurePa, double[] rate) {
    this.pressurePa = pressurePa;
    this.rate = rate;
  }

  /**
   * Draws the line.
   *
   * @param airLayerM sd of each plane from the inner surface [m], rising
   * @param saturationPa saturation at each plane [Pa]
   * @param indoorPa pi [Pa]; above saturation at the surface it counts as saturation
   * @param outdoorPa pe [Pa], likewise
   * @param wet whether water lies at a plane; at the surfaces it is not looked at
   */
  public static VapourLine drawn(
      double[] airLayerM, double[] saturationPa, double indoorPa, double outdoorPa, boolean[] wet) {
    int last = airLayerM.length - 1;
    Bounds.atLeast("number of planes", last, 1);
    double[] ceiling = saturationPa.clone();
    ceiling[0] = Math.min(indoorPa, saturationPa[0]);
    ceiling[last] = Math.min(outdoorPa, saturationPa[last]);
    int[] touched = hull(airLayerM, ceiling, wet);
    return new VapourLine(between(airLayerM, ceiling, touched), rates(airLayerM, ceiling, touched));
  }

  /** Vapour pressure at a plane [Pa]. */
  public double pressurePa(int plane) {
    return pressurePa[plane];
  }

  /**
   * Water that settles at a plane [kg/(m²·s)]; negative where it leaves, 0 at a plane that the line
   * does not touch and at the surfaces.
   */
  public double rateKgM2S(int plane) {
    return rate[plane];
  }

  /** The planes that the line touches, both surfaces included; wet planes are always among them. */
  private static int[] hull(double[] x, double[] y, boolean[] wet) {
    int[] kept = new int[x.length];
    int size = 0;
    for (int k = 0; k < x.length; k++) {
      while (size >= 2 && !wet[kept[size - 1]] && !below(x, y, kept[size - 2], kept[size - 1], k)) {
        size--;
      }
      kept[size++] = k;
    }
    return Arrays.copyOf(kept, size);
  }

  /** Whether the middle point lies below the straight line between the outer two. */
  private static boolean below(double[] x, double[] y, int from, int middle, int to) {
    return (y[middle] - y[from]) * (x[to] - x[from]) < (y[to] - y[from]) * (x[middle] - x[from]);
  }

  private static double[] between(double[] x, double[] y, int[] touched) {
    double[] line = new double[x.length];
    for (int i = 1; i < touched.length; i++) {
      int from = touched[i - 1];
      int to = touched[i];
      for (int k = from; k <= to; k++) {
        line[k] = y[from] + (y[to] - y[from]) * (x[k] - x[from]) / (x[to] - x[from]);
      }
    }
    return line;
  }

  private static double[] rates(double[] x, double[] y, int[] touched) {
    double[] rates = new double[x.length];
    for (int i = 1; i < touched.length - 1; i++) {
      int k = touched[i];
      rates[k] =
          AIR_PERMEABILITY * (slope(x, y, touched[i - 1], k) - slope(x, y, k, touched[i + 1]));
    }
    return rates;
  }

  /** Fall of pressure by sd [Pa/m]. */
  private static double slope(double[] x, double[] y, int from, int to) {
    return (y[from] - y[to]) / (x[to] - x[from]);
  }
}
