package org.drysill.report.pdf.economy;

/**
 * A matrix of the page (ISO 32000-1, 8.3.3): a point (x, y) comes to (a x + c y + e, b x + d y +
 * f).
 */
record Place(double a, double b, double c, double d, double e, double f) {
  static final Place NONE = new Place(1, 0, 0, 1, 0, 0);

  static Place of(String numbers) {
    String[] words = numbers.split(" ", -1);
    double[] n = new double[6];
    for (int i = 0; i < n.length; i++) {
      n[i] = Double.parseDouble(words[i]);
    }
    return new Place(n[0], n[1], n[2], n[3], n[4], n[5]);
  }

  /** First this one, then the one that it stands in. */
  Place within(Place outer) {
    return new Place(
        a * outer.a + b * outer.c,
        a * outer.b + b * outer.d,
        c * outer.a + d * outer.c,
        c * outer.b + d * outer.d,
        e * outer.a + f * outer.c + outer.e,
        e * outer.b + f * outer.d + outer.f);
  }

  boolean isNone() {
    return isUpright() && e == 0 && f == 0;
  }

  /** True where it only moves. */
  boolean isUpright() {
    return a == 1 && b == 0 && c == 0 && d == 1;
  }
}
