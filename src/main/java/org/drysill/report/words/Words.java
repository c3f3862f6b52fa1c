package org.drysill.report.words;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Verdict;
import org.drysill.yaml.Moment;

/** Words that no number is in: dates, lists, plurals, verdicts. */
public final class Words {
  /** The letters under a month axis that begins in January. */
  public static final List<String> MONTH_LETTERS =
      List.of("J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D");

  // Written out: names from the platform's locale data change from one release to the next.
  private static final List<String> MONTHS =
      List.of(
          "January",
          "February",
          "March",
          "April",
          "May",
          "June",
          "July",
          "August",
          "September",
          "October",
          "November",
          "December");
  private static final List<String> SMALL =
      List.of(
          "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private Words() {}

  /** The name of a month, 1 for January. */
  public static String month(int number) {
    return MONTHS.get(number - 1);
  }

  /** A date, such as {@code 22 January 2026}. */
  public static String date(LocalDate date) {
    return date.getDayOfMonth()
        + Numbers.JOIN
        + month(date.getMonthValue())
        + Numbers.JOIN
        + date.getYear();
  }

  /** A moment, with its time where it has one. */
  public static String moment(Moment moment) {
    return date(moment.date()) + moment.time().map(t -> ", " + CLOCK.format(t)).orElse("");
  }

  /** Months in a sentence: runs as {@code November to March}, others one by one. */
  public static String months(List<Integer> numbers) {
    return MonthRuns.of(numbers, Words::month);
  }

  /** Months in a table: runs as {@code Nov–Mar}, all twelve as {@code all year}. */
  public static String shortMonths(List<Integer> numbers) {
    return MonthRuns.of(numbers, number -> month(number).substring(0, 3)).replace(" to ", "–");
  }

  /** Things in a sentence: {@code a, b and c}; those with commas {@code a, x; b; and c}. */
  public static String list(List<String> things) {
    int last = things.size() - 1;
    return last < 1
        ? String.join("", things)
        : String.join(between(things), things.subList(0, last)) + and(things) + things.get(last);
  }

  /** The first few things in a sentence, and how many more there are. */
  public static String list(List<String> things, int most, String oneMore, String manyMore) {
    if (things.size() <= most) {
      return list(things);
    }
    int left = things.size() - most;
    return String.join(between(things), things.subList(0, most))
        + and(things)
        + count(left, oneMore, manyMore);
  }

  private static String between(List<String> things) {
    return haveCommas(things) ? "; " : ", ";
  }

  private static String and(List<String> things) {
    return haveCommas(things) ? "; and " : " and ";
  }

  private static boolean haveCommas(List<String> things) {
    return things.stream().anyMatch(t -> t.contains(","));
  }

  /**
   * How many, in words up to twelve: {@code no window}, {@code one window}, {@code two windows}.
   */
  public static String count(int number, String one, String many) {
    return number(number) + " " + (number == 1 || number == 0 ? one : many);
  }

  /** With the article that its first letter asks for: {@code a flat}, {@code an open flue}. */
  public static String article(String words) {
    return (!words.isEmpty() && "aeioAEIO".indexOf(words.charAt(0)) >= 0 ? "an " : "a ") + words;
  }

  /** A number in words up to twelve, then in digits. */
  public static String number(int number) {
    return number >= 0 && number < SMALL.size() ? SMALL.get(number) : Integer.toString(number);
  }

  /** With a capital first letter. */
  public static String capital(String text) {
    if (text.isEmpty()) {
      return text;
    }
    int first = text.offsetByCodePoints(0, 1);
    return text.substring(0, first).toUpperCase(Locale.ROOT) + text.substring(first);
  }

  /** As a sentence: a capital at its start, a full stop at its end. */
  public static String sentence(String text) {
    String trimmed = text.strip();
    boolean ended = trimmed.isEmpty() || ".!?:…".indexOf(trimmed.charAt(trimmed.length() - 1)) >= 0;
    return capital(trimmed) + (ended ? "" : ".");
  }

  /** Cut at a number of characters, with an ellipsis where something is left out. */
  public static String shortened(String text, int most) {
    if (text.codePointCount(0, text.length()) <= most) {
      return text;
    }
    return text.substring(0, text.offsetByCodePoints(0, most - 1)).strip() + "…";
  }

  /**
   * A name as it stands within a sentence: "Back bedroom" becomes "back bedroom"; "WC" and names of
   * one letter stay as they are, and so does "Anna's room", since it may be a person's.
   */
  public static String within(String name) {
    boolean plain =
        name.length() > 1
            && Character.isUpperCase(name.charAt(0))
            && (Character.isLowerCase(name.charAt(1)) || name.matches("A \\p{Ll}.*"))
            && !name.split(" ", 2)[0].matches(".*['’]s?");
    return plain ? name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1) : name;
  }

  /** What something costs to run, or saves where that is less than nothing. */
  public static String running(Numbers numbers, Figure cost) {
    String amount = numbers.one(Math.abs(cost.likely()), cost.unit());
    if (amount.equals(numbers.one(0, cost.unit()))) {
      return "nothing to run";
    }
    return cost.likely() < 0 ? "saves " + amount : amount + " to run";
  }

  /** The word beside the mark. */
  public static String verdict(Verdict verdict) {
    return switch (verdict) {
      case MEETS -> "meets";
      case SHORT -> "short";
      case UNKNOWN -> "not told";
    };
  }

  /** On what a figure rests. */
  public static String basis(Basis basis) {
    return basis.name().toLowerCase(Locale.ROOT);
  }

  /** The texts of things in a sentence. */
  public static <T> String list(List<T> things, Function<T, String> text) {
    return list(things.stream().map(text).toList());
  }
}
