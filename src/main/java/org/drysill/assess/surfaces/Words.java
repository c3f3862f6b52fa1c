package org.drysill.assess.surfaces;

import java.util.Locale;

/** Numbers and names within sentences. */
final class Words {
  private Words() {}

  /** With at most one decimal. */
  static String number(double value) {
    return value == Math.rint(value) ? whole(value) : String.format(Locale.ROOT, "%.1f", value);
  }

  /** Without decimals. */
  static String whole(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }

  /** A temperature factor. */
  static String factor(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  /** A ratio in percent. */
  static String percent(double ratio) {
    return String.format(Locale.ROOT, "%.0f %%", ratio * 100);
  }

  /** With a capital first letter. */
  static String capital(String name) {
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }
}
