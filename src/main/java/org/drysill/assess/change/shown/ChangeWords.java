package org.drysill.assess.change.shown;

import java.util.Locale;
import java.util.Optional;

/** Changes in words that do not mix points with percent. */
public final class ChangeWords {
  private static final double NEAR = 0.02;

  private ChangeWords() {}

  /** Such as {@code 55 % to 41 %: 14 percentage points lower, about a quarter less}. */
  public static String humidity(double before, double after) {
    double points = (after - before) * 100;
    String span = percent(before) + " to " + percent(after);
    if (Math.abs(points) < 0.5) {
      return span + ": the same";
    }
    double share = Math.abs(after - before) / before;
    String way = points < 0 ? "less" : "more";
    return span
        + ": "
        + points(Math.abs(points))
        + (points < 0 ? " lower, " : " higher, ")
        + fraction(share)
            .map(words -> "about " + words + " " + way)
            .orElse(way + " by " + percent(share) + " of what it was");
  }

  /** A share in words, such as {@code a quarter less} or {@code 37 % less}. */
  public static String share(double ratio) {
    String way = ratio < 0 ? " less" : " more";
    return fraction(Math.abs(ratio)).orElse(percent(Math.abs(ratio))) + way;
  }

  /** Such as {@code 14 percentage points}. */
  public static String points(double points) {
    String number = String.format(Locale.ROOT, "%.0f", points);
    return number + (number.equals("1") ? " percentage point" : " percentage points");
  }

  /** A ratio in percent. */
  public static String percent(double ratio) {
    return String.format(Locale.ROOT, "%.0f %%", ratio * 100);
  }

  /** A number with its sign and one decimal; what rounds to nothing is {@code +0.0}. */
  public static String signed(double number) {
    double rounded = Math.round(number * 10) / 10.0;
    return String.format(Locale.ROOT, "%+.1f", rounded).replace('-', '−');
  }

  /** A number with two decimals, such as a temperature factor. */
  public static String twoDecimals(double number) {
    return String.format(Locale.ROOT, "%.2f", number);
  }

  /** A plain fraction near a share. */
  private static Optional<String> fraction(double share) {
    for (Fraction fraction : Fraction.values()) {
      if (Math.abs(share - fraction.value) <= NEAR) {
        return Optional.of(fraction.words);
      }
    }
    return Optional.empty();
  }

  private enum Fraction {
    TENTH(0.1, "a tenth"),
    FIFTH(0.2, "a fifth"),
    QUARTER(0.25, "a quarter"),
    THIRD(1.0 / 3, "a third"),
    HALF(0.5, "half");

    private final double value;
    private final String words;

    Fraction(double value, String words) {
      this.value = value;
      this.words = words;
    }
  }
}
