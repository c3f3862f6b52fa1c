package org.drysill.report.pdf.economy;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntFunction;

/**
 * Codes for the glyphs of one font. The PDF library writes two bytes for each glyph, most of them
 * as four digits; one byte is enough for what a report uses, as far as possible that of ASCII. Past
 * {@value #SINGLE_LAST} two bytes begin.
 */
final class GlyphCodes {
  /** The first byte of codes of two bytes. */
  static final int DOUBLE_FIRST = 0xf0;

  static final int SINGLE_LAST = DOUBLE_FIRST - 1;

  /** Not the space: programs that stretch lines widen the code of ASCII's space. */
  private static final int LOWEST = 0x21;

  private static final int HIGHEST_ASCII = 0x7e;
  private static final int LOWEST_OTHER = 0x80;

  private final IntFunction<String> unicode;
  private final GlyphWidths widths;
  private final Map<Integer, Integer> codes = new TreeMap<>();
  private final Deque<Integer> free = new ArrayDeque<>();
  private final boolean[] taken = new boolean[DOUBLE_FIRST];
  private int nextDouble = DOUBLE_FIRST << Byte.SIZE;

  /**
   * The codes of a font.
   *
   * @param unicode the text of a glyph by its number; null where it is not known
   * @param widths how wide its glyphs are
   */
  GlyphCodes(IntFunction<String> unicode, GlyphWidths widths) {
    this.unicode = unicode;
    this.widths = widths;
    for (int code = LOWEST_OTHER; code <= SINGLE_LAST; code++) {
      free.add(code);
    }
  }

  /** The codes by glyph, in the order of the glyphs. */
  Map<Integer, Integer> codes() {
    return codes;
  }

  /** The text of a glyph; null where it is not known. */
  String unicode(int glyph) {
    return unicode.apply(glyph);
  }

  /** A line that shows text: one string, or an array of strings and distances. */
  String recoded(String line) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    while (at < line.length()) {
      char begin = line.charAt(at);
      if (begin == '(' || begin == '<') {
        ShownText text = ShownText.at(line, at);
        write(text.bytes(), out);
        at = text.end();
      } else {
        out.append(begin);
        at++;
      }
    }
    return out.toString();
  }

  /** How wide the string is that a line shows, in thousandths of the size of the font. */
  double width(String line) {
    byte[] glyphs = ShownText.at(line, 0).bytes();
    double width = 0;
    for (int i = 0; i + 1 < glyphs.length; i += 2) {
      width += widths.of(glyph(glyphs, i));
    }
    return width;
  }

  private static int glyph(byte[] glyphs, int at) {
    return ((glyphs[at] & 0xff) << Byte.SIZE) | (glyphs[at + 1] & 0xff);
  }

  private void write(byte[] glyphs, StringBuilder out) {
    out.append('(');
    for (int i = 0; i + 1 < glyphs.length; i += 2) {
      int code = codes.computeIfAbsent(glyph(glyphs, i), this::code);
      if (code > 0xff) {
        character(code >> Byte.SIZE, out);
      }
      character(code & 0xff, out);
    }
    out.append(')');
  }

  private static void character(int code, StringBuilder out) {
    switch (code) {
      case '(', ')', '\\' -> out.append('\\').append((char) code);
      case '\n' -> out.append("\\n");
      case '\r' -> out.append("\\r");
      default -> out.append((char) code);
    }
  }

  private int code(int glyph) {
    String text = unicode.apply(glyph);
    if (text != null && text.length() == 1 && isPlain(text.charAt(0)) && !taken[text.charAt(0)]) {
      taken[text.charAt(0)] = true;
      return text.charAt(0);
    }
    return free.isEmpty() ? nextDouble++ : free.remove();
  }

  private static boolean isPlain(char character) {
    return character >= LOWEST
        && character <= HIGHEST_ASCII
        && character != '('
        && character != ')'
        && character != '\\';
  }
}
