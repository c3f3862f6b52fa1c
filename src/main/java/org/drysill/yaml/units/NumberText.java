package org.drysill.yaml.units;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drysill.yaml.units.QuantityException.Fault;

/**
 * The number at the head of a text: {@code 12.5}, {@code 12,5}, {@code 3/4}, {@code 1 1/2}, {@code
 * 1½}. A comma before exactly three digits may be a thousands mark or a decimal mark and is
 * refused, and so is any other grouping.
 *
 * @param value the number
 * @param rest what follows it, stripped
 */
record NumberText(double value, String rest) {
  private static final Map<String, Double> VULGAR =
      Map.of(
          "½", 1 / 2.0, "¼", 1 / 4.0, "¾", 3 / 4.0, "⅓", 1 / 3.0, "⅔", 2 / 3.0, "⅛", 1 / 8.0, "⅜",
          3 / 8.0, "⅝", 5 / 8.0, "⅞", 7 / 8.0);
  private static final Pattern HEAD =
      Pattern.compile(
          "(?<sign>[+-]?)(?:"
              + "(?:(?<whole>\\d+)[ -])?(?<top>\\d+)/(?<bottom>\\d+)"
              + "|(?<before>\\d*) ?(?<vulgar>[½¼¾⅓⅔⅛⅜⅝⅞])"
              + "|(?<plain>(?:\\d+(?:[.,'_]\\d+)*|[.,]\\d+)(?:[eE][+-]?\\d+)?)"
              + ")(?<rest>.*)");

  static NumberText of(String text) throws QuantityException {
    Matcher head = HEAD.matcher(text);
    if (!head.matches()) {
      throw new QuantityException(Fault.NOT_A_NUMBER, "it does not begin with a number");
    }
    double size = size(head);
    if (!Double.isFinite(size)) {
      throw new QuantityException(Fault.NOT_A_NUMBER, "the number is too large, or divides by 0");
    }
    String rest = head.group("rest").strip();
    if (!rest.isEmpty() && isDigit(rest.charAt(0)) && !rest.matches("1/\\D.*")) {
      throw new QuantityException(
          Fault.AMBIGUOUS, "there is a gap inside the number; write it in one piece");
    }
    return new NumberText(head.group("sign").equals("-") ? -size : size, rest);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static double size(Matcher head) throws QuantityException {
    if (head.group("top") != null) {
      return wholeOrZero(head.group("whole"))
          + Double.parseDouble(head.group("top")) / Double.parseDouble(head.group("bottom"));
    }
    if (head.group("vulgar") != null) {
      return wholeOrZero(head.group("before")) + VULGAR.get(head.group("vulgar"));
    }
    return plain(head.group("plain"));
  }

  private static double wholeOrZero(String digits) {
    return digits == null || digits.isEmpty() ? 0 : Double.parseDouble(digits);
  }

  private static double plain(String digits) throws QuantityException {
    String mantissa = digits.replaceFirst("[eE].*", "");
    boolean grouped = mantissa.matches(".*['_].*|.*[.,].*[.,].*");
    if (grouped) {
      throw new QuantityException(Fault.AMBIGUOUS, "write it without marks between thousands");
    }
    if (mantissa.matches("[1-9]\\d{0,2},\\d{3}")) {
      throw new QuantityException(
          Fault.AMBIGUOUS,
          "it can be read as "
              + mantissa.replace(",", "")
              + " or as "
              + mantissa.replace(',', '.')
              + "; write one of these");
    }
    return Double.parseDouble(digits.replace(',', '.'));
  }
}
