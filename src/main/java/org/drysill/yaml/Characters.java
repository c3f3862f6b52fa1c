package org.drysill.yaml;

import java.util.Locale;
import java.util.OptionalInt;

/**
 * Which characters a text may hold: those of XML 1.0 (Fifth Edition, production 2 "Char") without
 * the control characters that it discourages, since the report is built as XML, and without those
 * that turn the direction of a text around, so that it shows another order than it has.
 */
final class Characters {
  private Characters() {}

  /** The index of the first char that may not be there; empty where all may. */
  static OptionalInt firstForbidden(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= 0x20 && c < 0x7F) {
        continue;
      }
      int point = text.codePointAt(i);
      if (!isAllowed(point)) {
        return OptionalInt.of(i);
      }
      i += Character.charCount(point) - 1;
    }
    return OptionalInt.empty();
  }

  private static boolean isAllowed(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || (c >= 0x20 && c < 0x7F)
        || c == 0x85
        || (c >= 0xA0 && c <= 0xD7FF && !turnsRound(c))
        || (c >= 0xE000 && c <= 0xFFFD && c != 0xFEFF)
        || c >= 0x10000;
  }

  /** Embeddings, overrides and isolates; letters of any script need none of them. */
  private static boolean turnsRound(int c) {
    return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
  }

  /** A name such as {@code the character U+0007}. */
  static String name(int point) {
    return String.format(Locale.ROOT, "the character U+%04X", point);
  }
}
