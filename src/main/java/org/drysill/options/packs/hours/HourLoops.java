package org.drysill.options.packs.hours;

import org.drysill.physics.air.SaturationTable;

/**
 * Loops over rows of one value a sample. They have no branches and index every row by the loop's
 * variable alone, so that the machine works on several samples at once.
 */
final class HourLoops {
  private HourLoops() {}

  /** y = b x. */
  static void multiply(double b, double[] x, double[] y) {
    for (int l = 0; l < y.length; l++) {
      y[l] = b * x[l];
    }
  }

  /** y = z + b x, m = max(m; y). */
  static void add(double b, double[] x, double[] z, double[] y, double[] m) {
    for (int l = 0; l < y.length; l++) {
      y[l] = z[l] + b * x[l];
      m[l] = Math.max(m[l], y[l]);
    }
  }

  /** c = x e/(v + nothing), m = max(m; c): nothing is 1 where v is always 0, else 0. */
  static void perContent(
      double[] x, double e, double[] v, double[] nothing, double[] c, double[] m) {
    for (int l = 0; l < c.length; l++) {
      double content = x[l] * e / (v[l] + nothing[l]);
      c[l] = content;
      m[l] = Math.max(m[l], content);
    }
  }

  /** c += x e/(v + nothing). */
  static void perContent(double[] x, double e, double[] v, double[] nothing, double[] c) {
    for (int l = 0; l < c.length; l++) {
      c[l] += x[l] * e / (v[l] + nothing[l]);
    }
  }

  /** s += min(full; po + c v). */
  static void vapour(double full, double[] po, double[] c, double[] v, double[] s) {
    for (int l = 0; l < s.length; l++) {
      s[l] += Math.min(full, po[l] + c[l] * v[l]);
    }
  }

  /**
   * A pane of factor f in an hour, bears = ps(Te + f (Ti − Te)): base = β (po − bears), cap = β
   * (full − bears). The one loop here that works on one sample at a time, since it reads a table.
   */
  static void pane(
      double outdoor,
      double indoor,
      double full,
      double transfer,
      double[] factors,
      double[] po,
      double[] base,
      double[] cap) {
    for (int l = 0; l < factors.length; l++) {
      double bears = SaturationTable.pressurePa(outdoor + factors[l] * (indoor - outdoor));
      base[l] = transfer * (po[l] - bears);
      cap[l] = transfer * (full - bears);
    }
  }

  /**
   * What settles in an hour with β, g = min(cap; base + β c v), and the water that then clings, w =
   * min(clings; max(0; w + g)).
   */
  static void settle(
      double transfer,
      double[] base,
      double[] cap,
      double[] c,
      double[] v,
      double clings,
      double[] gain,
      double[] water) {
    for (int l = 0; l < water.length; l++) {
      double settling = Math.min(cap[l], base[l] + transfer * c[l] * v[l]);
      double left = water[l] + settling;
      gain[l] = settling;
      water[l] = Math.min(clings, 0.5 * (left + Math.abs(left)));
    }
  }

  /**
   * The same for a warmer pane, from which more dries: w = max(w; min(clings; max(0; w + g − less
   * cap))).
   */
  static void settleWarmer(
      double[] gain, double less, double[] cap, double clings, double[] water, double[] warmer) {
    for (int l = 0; l < warmer.length; l++) {
      double left = warmer[l] + (gain[l] - less * cap[l]);
      warmer[l] = Math.max(water[l], Math.min(clings, 0.5 * (left + Math.abs(left))));
    }
  }

  /** True where some value is another. */
  static boolean differ(double[] x, double[] y) {
    double sum = 0;
    for (int l = 0; l < x.length; l++) {
      sum += Math.abs(x[l] - y[l]);
    }
    return sum != 0;
  }
}
