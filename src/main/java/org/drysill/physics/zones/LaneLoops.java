package org.drysill.physics.zones;

/**
 * Loops over rows of as many values as there are lanes. They have no branches and index every row
 * by the loop's variable alone, so that the machine works on several lanes at once: x + |x| stands
 * for what is above 0, and a least value for a choice.
 */
final class LaneLoops {
  /** Makes 1 of the least difference of two contents that a number can tell. */
  private static final double STEEP = 1e300;

  private LaneLoops() {}

  /** A zone with its stores: d = g + s, x = s y. */
  static void load(double[] g, double s, double[] y, double[] d, double[] x) {
    for (int l = 0; l < d.length; l++) {
      d[l] = g[l] + s;
      x[l] = s * y[l];
    }
  }

  /** The same with a pane that takes with w: d = g + s + w, x = s y − w (v∞ − vs). */
  static void load(
      double[] g,
      double s,
      double[] y,
      double[] w,
      double[] steady,
      double vs,
      double[] d,
      double[] x) {
    for (int l = 0; l < d.length; l++) {
      d[l] = g[l] + s + w[l];
      x[l] = s * y[l] - w[l] * (steady[l] - vs);
    }
  }

  /** One more pane: d += w, x −= w (v∞ − vs). */
  static void take(double[] w, double[] steady, double vs, double[] d, double[] x) {
    for (int l = 0; l < d.length; l++) {
      d[l] += w[l];
      x[l] -= w[l] * (steady[l] - vs);
    }
  }

  /** Inverts a pivot, p = 1/p, and takes its zone out of the balance of another. */
  static void eliminateFirst(
      double[] b, double[] a, double[] p, double[] x, double[] d, double[] y) {
    for (int l = 0; l < d.length; l++) {
      double inverse = 1 / p[l];
      double factor = b[l] * inverse;
      d[l] -= factor * a[l];
      y[l] -= factor * x[l];
      p[l] = inverse;
    }
  }

  /** Takes a zone of inverse pivot p out of the balance of another: d −= b p a, y −= b p x. */
  static void eliminate(double[] b, double[] a, double[] p, double[] x, double[] d, double[] y) {
    for (int l = 0; l < d.length; l++) {
      double factor = b[l] * p[l];
      d[l] -= factor * a[l];
      y[l] -= factor * x[l];
    }
  }

  /** What that makes of the link between two others: c −= b p a. */
  static void eliminate(double[] b, double[] a, double[] p, double[] c) {
    for (int l = 0; l < c.length; l++) {
      c[l] -= b[l] * p[l] * a[l];
    }
  }

  /** x −= a y. */
  static void substitute(double[] a, double[] y, double[] x) {
    for (int l = 0; l < x.length; l++) {
      x[l] -= a[l] * y[l];
    }
  }

  /** x = p (x − a y). */
  static void substituteLast(double[] a, double[] y, double[] p, double[] x) {
    for (int l = 0; l < x.length; l++) {
      x[l] = p[l] * (x[l] - a[l] * y[l]);
    }
  }

  /** x = x/d. */
  static void divide(double[] d, double[] x) {
    for (int l = 0; l < x.length; l++) {
      x[l] /= d[l];
    }
  }

  /** w = k where v∞ + d would be above vs if d went on as from e to d, else 0. */
  static void guess(double[] steady, double[] d, double[] e, double vs, double[] k, double[] w) {
    for (int l = 0; l < w.length; l++) {
      double over = steady[l] + (2 * d[l] - e[l]) - vs;
      w[l] = Math.min(k[l], (over + Math.abs(over)) * STEEP);
    }
  }

  /** w' = k where v∞ + d is above vs, else 0; t += |w' − w|. */
  static void turn(double[] steady, double[] d, double vs, double[] k, double[] w, double[] t) {
    for (int l = 0; l < w.length; l++) {
      double over = steady[l] + d[l] - vs;
      double now = Math.min(k[l], (over + Math.abs(over)) * STEEP);
      t[l] += Math.abs(now - w[l]);
      w[l] = now;
    }
  }

  /** y += a x. */
  static void add(double[] a, double[] x, double[] y) {
    for (int l = 0; l < y.length; l++) {
      y[l] += a[l] * x[l];
    }
  }

  /** y = v∞ + d. */
  static void content(double[] steady, double[] d, double[] y) {
    for (int l = 0; l < y.length; l++) {
      y[l] = steady[l] + d[l];
    }
  }

  /** True where some lane is not 0. */
  static boolean isAny(double[] row) {
    for (int l = 0; l < row.length; l++) {
      if (row[l] != 0) {
        return true;
      }
    }
    return false;
  }
}
