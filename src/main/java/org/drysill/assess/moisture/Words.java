package org.drysill.assess.moisture;

import java.util.Locale;
import org.drysill.physics.Range;

/** Numbers and names as they stand in sentences. */
final class Words {
  private Words() {}

  /** Such as {@code 4} or {@code 10.5 (3.5 to 21)}. */
  static String range(Range number) {
    return number.isSpread()
        ? plain(number.likely()) + " (" + plain(number.low()) + " to " + plain(number.high()) + ")"
        : plain(number.likely());
  }

  /** With a capital letter; at least one letter. */
  static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String plain(double number) {
    return String.format(Locale.ROOT, number == Math.rint(number) ? "%.0f" : "%.1f", number);
  }
}
