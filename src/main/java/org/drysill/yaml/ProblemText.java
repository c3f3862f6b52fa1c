package org.drysill.yaml;

import java.util.Locale;

/**
 * A problem as text: place, severity, code, key, what was found and expected in one line; the line
 * of the file; a caret under its column; what was probably meant.
 */
public final class ProblemText {
  private static final int WIDEST = 100;
  private static final int BEFORE_CARET = 60;

  private ProblemText() {}

  /** The whole text, without a line end at its end. */
  public static String of(Problem problem) {
    StringBuilder text = new StringBuilder(heading(problem));
    if (!problem.sourceLine().isBlank()) {
      text.append('\n').append(excerpt(problem.sourceLine(), problem.place().column()));
    }
    problem
        .suggestion()
        .ifPresent(word -> text.append("\n    did you mean \"").append(word).append("\"?"));
    return text.toString();
  }

  /** The first line alone. */
  public static String heading(Problem problem) {
    Place place = problem.place();
    return place.file()
        + ":"
        + place.line()
        + ":"
        + place.column()
        + ": "
        + problem.severity().name().toLowerCase(Locale.ROOT)
        + " "
        + problem.code()
        + ": "
        + (problem.key().isEmpty() ? "" : problem.key() + ": ")
        + "found "
        + problem.found()
        + ", expected "
        + problem.expected();
  }

  /** The line, cut around the column where it is long, and below it the caret. */
  private static String excerpt(String line, int column) {
    int[] points = line.codePoints().toArray();
    int caret = Math.min(column - 1, points.length);
    int from = points.length <= WIDEST || caret < BEFORE_CARET ? 0 : caret - BEFORE_CARET;
    int to = Math.min(points.length, from + WIDEST);
    String start = from > 0 ? "…" : "";
    String before = printable(points, from, caret);
    String after = printable(points, caret, Math.max(caret, to));
    String end = to < points.length ? "…" : "";
    return "    "
        + start
        + before
        + after
        + end
        + "\n    "
        + " ".repeat(start.length())
        + blank(before)
        + "^";
  }

  /** Tabs become one space each, so that the caret does not depend on the terminal. */
  private static String printable(int[] points, int from, int to) {
    StringBuilder text = new StringBuilder();
    for (int i = from; i < to; i++) {
      boolean control = Character.isISOControl(points[i]);
      text.appendCodePoint(points[i] == '\t' ? ' ' : control ? '\uFFFD' : points[i]);
    }
    return text.toString();
  }

  /** As many spaces as the text is wide on a terminal. */
  private static String blank(String text) {
    return " ".repeat(text.codePoints().map(ProblemText::width).sum());
  }

  /** Columns of a terminal: marks take none, East Asian wide characters and emoji two. */
  private static int width(int point) {
    int type = Character.getType(point);
    if (type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT) {
      return 0;
    }
    return isWide(point) ? 2 : 1;
  }

  private static boolean isWide(int point) {
    if (point >= 0x1F300 && point <= 0x1FAFF) {
      return true;
    }
    if (point >= 0xFF01 && point <= 0xFF60) {
      return true;
    }
    return switch (Character.UnicodeScript.of(point)) {
      case HAN, HIRAGANA, KATAKANA, HANGUL -> true;
      default -> false;
    };
  }
}
