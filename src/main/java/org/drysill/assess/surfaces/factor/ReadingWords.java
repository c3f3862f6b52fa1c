package org.drysill.assess.surfaces.factor;

import java.util.Locale;

/** Numbers within sentences. */
final class ReadingWords {
  private ReadingWords() {}

  /** With one decimal. */
  static String tenth(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** Without decimals that are not there. */
  static String plain(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : tenth(value);
  }
}
