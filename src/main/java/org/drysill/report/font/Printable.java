package org.drysill.report.font;

import java.util.Locale;
import java.util.function.IntConsumer;

/**
 * Text as the fonts can print it. A character that none of them has, or that may not stand in XML,
 * becomes its code point in brackets, such as [U+1F600], so that nothing is lost without a word.
 */
public final class Printable {
  private final Fonts fonts;

  /** Holds text against these fonts. */
  public Printable(Fonts fonts) {
    this.fonts = fonts;
  }

  /**
   * The text with every missing character written as its code point.
   *
   * @param missing told of each of them
   */
  public String of(String text, IntConsumer missing) {
    if (printsWhole(text)) {
      return text;
    }
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            codePoint -> {
              if (prints(codePoint)) {
                out.appendCodePoint(codePoint);
              } else {
                missing.accept(codePoint);
                out.append('[').append(name(codePoint)).append(']');
              }
            });
    return out.toString();
  }

  /** A code point as it is commonly written, such as U+1F600. */
  public static String name(int codePoint) {
    return String.format(Locale.ROOT, "U+%04X", codePoint);
  }

  private boolean printsWhole(String text) {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      if (!prints(text.codePointAt(i))) {
        return false;
      }
    }
    return true;
  }

  private boolean prints(int codePoint) {
    if (codePoint == '\n' || codePoint == '\r' || codePoint == '\t') {
      return true;
    }
    if (codePoint >= ' ' && codePoint <= '~') {
      return true;
    }
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.UNASSIGNED ->
          codePoint == SOFT_HYPHEN || codePoint == ZERO_WIDTH_SPACE;
      default -> codePoint != OBJECT_REPLACEMENT && fonts.canSet(codePoint);
    };
  }

  /** The layout drops it. */
  private static final int OBJECT_REPLACEMENT = 0xFFFC;

  private static final int SOFT_HYPHEN = 0xAD;
  private static final int ZERO_WIDTH_SPACE = 0x200B;
}
