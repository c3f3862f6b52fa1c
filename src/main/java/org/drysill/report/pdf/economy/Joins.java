package org.drysill.report.pdf.economy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which marked contents of a page become one: those that follow each other on the page and in the
 * element of the structure that holds both, such as the lines of a paragraph.
 */
final class Joins {
  private static final Pattern NUMBERED = Pattern.compile("/\\w+ <</MCID (\\d+)>> BDC");

  private final Map<Integer, Integer> before = new HashMap<>();
  private final Map<Integer, Integer> after = new HashMap<>();

  /** Takes note that an element holds one content directly after another. */
  void follows(int content, int next) {
    before.put(next, content);
    after.put(content, next);
  }

  /** Whether a mark goes on with what the mark before it began. */
  boolean join(String first, String next) {
    int content = number(next);
    return content >= 0 && before.getOrDefault(content, -1) == number(first);
  }

  /**
   * Pieces in which those of one element follow each other as it holds them, at the place of the
   * first that is painted; the others as they are painted.
   */
  List<TextObject.Piece> inOrder(List<TextObject.Piece> painted) {
    Map<Integer, TextObject.Piece> open = new LinkedHashMap<>();
    for (TextObject.Piece piece : painted) {
      open.put(number(piece.mark()), piece);
    }
    List<TextObject.Piece> ordered = new ArrayList<>(painted.size());
    for (TextObject.Piece piece : painted) {
      int number = number(piece.mark());
      if (number < 0) {
        ordered.add(piece);
      }
      while (open.containsKey(before.getOrDefault(number, -1))) {
        number = before.get(number);
      }
      while (number >= 0 && open.containsKey(number)) {
        ordered.add(open.remove(number));
        number = after.getOrDefault(number, -1);
      }
    }
    return ordered;
  }

  private static int number(String mark) {
    Matcher numbered = NUMBERED.matcher(mark);
    return numbered.matches() ? Integer.parseInt(numbered.group(1)) : -2;
  }
}
