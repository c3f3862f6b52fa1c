package org.drysill.survey.log.read;

import java.util.Locale;
import java.util.Set;

/** Reads decimal numbers in place, without making a text of each. */
final class DecimalText {
  /** Stands for a field that holds something else than a number. */
  static final double UNREADABLE = Double.POSITIVE_INFINITY;

  /** As many digits as a double holds exactly, and powers of ten that are exact. */
  private static final int MOST_DIGITS = 15;

  private static final double[] POWERS = {
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16,
    1e17, 1e18, 1e19, 1e20, 1e21, 1e22
  };

  private static final Set<String> MISSING =
      Set.of("nan", "-", "--", "---", "n/a", "na", "null", "none", "#n/a", "missing");
  private static final Set<String> UNITS =
      Set.of("%", "%rh", "% rh", "°c", "c", "°f", "f", "ppm", "℃", "℉");

  private final char mark;

  /** Reads numbers with a decimal mark. */
  DecimalText(char mark) {
    this.mark = mark;
  }

  /**
   * The number between two places of a text, spaces around it and a unit behind it allowed; NaN
   * where the field is empty or says that there is none, {@link #UNREADABLE} where it holds
   * something else.
   */
  double read(char[] text, int begin, int stop) {
    int from = begin;
    int to = stop;
    while (from < to && isSpace(text[from])) {
      from++;
    }
    while (to > from && isSpace(text[to - 1])) {
      to--;
    }
    return from == to ? Double.NaN : digits(text, from, to);
  }

  private double digits(char[] text, int from, int to) {
    boolean negative = text[from] == '-' || text[from] == '\u2212';
    int at = negative || text[from] == '+' ? from + 1 : from;
    long number = 0;
    int digits = 0;
    int decimals = -1;
    boolean any = false;
    for (; at < to; at++) {
      char c = text[at];
      if (c >= '0' && c <= '9') {
        number = number * 10 + (c - '0');
        digits += number == 0 ? 0 : 1;
        decimals += decimals >= 0 ? 1 : 0;
        any = true;
      } else if (c == mark && decimals < 0) {
        decimals = 0;
      } else {
        return slow(text, from, to);
      }
      if (digits > MOST_DIGITS) {
        return slow(text, from, to);
      }
    }
    int exponent = Math.max(0, decimals);
    if (!any || exponent >= POWERS.length) {
      return slow(text, from, to);
    }
    // Both are exact, so the quotient is the double nearest to what is written.
    double value = number / POWERS[exponent];
    return negative ? -value : value;
  }

  private double slow(char[] text, int from, int to) {
    String field = new String(text, from, to - from).toLowerCase(Locale.ROOT);
    if (MISSING.contains(field)) {
      return Double.NaN;
    }
    int end = field.length();
    while (end > 0 && !isDigit(field.charAt(end - 1)) && field.charAt(end - 1) != mark) {
      end--;
    }
    String unit = field.substring(end).strip();
    if (!unit.isEmpty() && !UNITS.contains(unit)) {
      return UNREADABLE;
    }
    return parsed(field.substring(0, end));
  }

  private double parsed(String number) {
    String plain = number.replace('\u2212', '-');
    boolean other = mark != '.' && plain.indexOf('.') >= 0;
    if (other || !plain.replace(mark, '.').matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)(e[+-]?\\d+)?")) {
      return UNREADABLE;
    }
    double value = Double.parseDouble(plain.replace(mark, '.'));
    return Double.isInfinite(value) ? UNREADABLE : value;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Spaces as they come from logs: the plain one, the unbreakable ones, a tab. */
  static boolean isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\u00A0' || c == '\u202F' || c == '"' || c == '\'';
  }
}
