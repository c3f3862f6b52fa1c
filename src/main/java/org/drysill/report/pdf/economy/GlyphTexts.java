package org.drysill.report.pdf.economy;

import java.util.HashMap;
import java.util.Map;
import java.util.StringTokenizer;

/**
 * The texts of the glyphs of a font as the PDF library tells them: ranges of one line each, between
 * {@code beginbfrange} and {@code endbfrange}.
 */
final class GlyphTexts {
  private static final int HEX = 16;
  private static final int DIGITS = 4;

  private final Map<Integer, String> texts = new HashMap<>();

  private GlyphTexts() {}

  /** The texts that a character map of the library tells. */
  static GlyphTexts of(String map) {
    GlyphTexts texts = new GlyphTexts();
    boolean isRange = false;
    for (String line : (Iterable<String>) map.lines()::iterator) {
      if (line.endsWith("beginbfrange")) {
        isRange = true;
      } else if (line.startsWith("endbfrange")) {
        isRange = false;
      } else if (isRange) {
        texts.range(new StringTokenizer(line, "<> "));
      }
    }
    return texts;
  }

  /** From one glyph to another, the last character of the text counting along. */
  private void range(StringTokenizer words) {
    int first = Integer.parseInt(words.nextToken(), HEX);
    int last = Integer.parseInt(words.nextToken(), HEX);
    char[] text = text(words.nextToken());
    for (int glyph = first; glyph <= last; glyph++) {
      texts.put(glyph, new String(text));
      text[text.length - 1]++;
    }
  }

  private static char[] text(String digits) {
    char[] text = new char[digits.length() / DIGITS];
    for (int i = 0; i < text.length; i++) {
      text[i] = (char) Integer.parseInt(digits, DIGITS * i, DIGITS * (i + 1), HEX);
    }
    return text;
  }

  /** The text of a glyph; null where it has none. */
  String of(int glyph) {
    return texts.get(glyph);
  }
}
