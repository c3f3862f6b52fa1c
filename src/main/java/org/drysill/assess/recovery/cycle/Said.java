package org.drysill.assess.recovery.cycle;

import java.util.Locale;

/** Numbers within sentences. */
final class Said {
  private Said() {}

  /** With at most one decimal. */
  static String number(double value) {
    double tenths = Math.round(value * 10) / 10.0;
    return String.format(Locale.ROOT, tenths == Math.rint(tenths) ? "%.0f" : "%.1f", tenths);
  }

  /** Without decimals from ten up. */
  static String seconds(double value) {
    return value < 10 ? number(value) : String.valueOf(Math.round(value));
  }
}
