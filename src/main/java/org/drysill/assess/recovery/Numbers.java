package org.drysill.assess.recovery;

import java.util.Locale;

/** Numbers within sentences. */
final class Numbers {
  /** What binary arithmetic takes from a whole number must not cost it one. */
  private static final double NOISE = 1e-9;

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

  /**
   * A ratio in percent that is held against what is declared: rounded down, so that no rounding
   * makes a unit look better, and alike wherever it is printed.
   */
  static String reached(double ratio) {
    return String.format(Locale.ROOT, "%.0f %%", Math.floor(ratio * 100 + NOISE));
  }

  /** With two decimals. */
  static String hundredth(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
