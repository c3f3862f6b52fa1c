package org.drysill.assess.recovery;

import java.util.Locale;

/** Numbers within sentences. */
final class Numbers {
  private Numbers() {}

  /** With at most one decimal. */
  static String number(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.1f", value);
  }

  /** A ratio in percent. */
  static String percent(double ratio) {
    return String.format(Locale.ROOT, "%.0f %%", ratio * 100);
  }

  /** With two decimals. */
  static String hundredth(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
