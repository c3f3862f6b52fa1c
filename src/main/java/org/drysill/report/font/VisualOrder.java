package org.drysill.report.font;

import java.text.Bidi;
import java.text.BreakIterator;
import java.util.Locale;

/**
 * The order in which letters stand on a line from left to right, where some of them are written
 * from right to left. Letters are not joined: a script that joins them stands in separate letters.
 */
public final class VisualOrder {
  /** Brackets that change sides in text from right to left, each beside its partner. */
  private static final String MIRRORED = "()[]{}<>«»";

  private VisualOrder() {}

  /** True where some of the text is written from right to left. */
  public static boolean matters(String text) {
    return Bidi.requiresBidi(text.toCharArray(), 0, text.length());
  }

  /** One line in the order in which it is set. */
  public static String of(String line) {
    if (!matters(line)) {
      return line;
    }
    Bidi bidi = new Bidi(line, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    byte[] levels = new byte[bidi.getRunCount()];
    String[] runs = new String[levels.length];
    for (int i = 0; i < runs.length; i++) {
      levels[i] = (byte) bidi.getRunLevel(i);
      String run = line.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
      runs[i] = levels[i] % 2 == 0 ? run : reversed(run);
    }
    Bidi.reorderVisually(levels, 0, runs, 0, runs.length);
    return String.join("", runs);
  }

  /** A run that is written from right to left, as it is set; marks stay with their letters. */
  public static String reversed(String run) {
    BreakIterator letters = BreakIterator.getCharacterInstance(Locale.ROOT);
    letters.setText(run);
    StringBuilder out = new StringBuilder(run.length());
    int end = letters.last();
    for (int start = letters.previous(); start != BreakIterator.DONE; start = letters.previous()) {
      out.append(mirrored(run.substring(start, end)));
      end = start;
    }
    return out.toString();
  }

  private static String mirrored(String letter) {
    int at = letter.length() == 1 ? MIRRORED.indexOf(letter) : -1;
    return at < 0 ? letter : MIRRORED.substring(at ^ 1, (at ^ 1) + 1);
  }
}
