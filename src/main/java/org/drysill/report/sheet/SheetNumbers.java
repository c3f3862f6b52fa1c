package org.drysill.report.sheet;

import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;

/** The numbers of the report with the marks of a language: same digits, same units. */
final class SheetNumbers {
  private final Numbers numbers;
  private final char decimal;
  private final char group;
  private final Phrases phrases;

  SheetNumbers(Numbers numbers, Phrases phrases) {
    this.numbers = numbers;
    this.phrases = phrases;
    this.decimal = phrases.say("number.decimal").charAt(0);
    this.group = phrases.say("number.group").charAt(0);
  }

  /** What is there, rounded down. */
  String found(Figure figure) {
    return one(figure.likely(), figure.unit(), Rounding.DOWN);
  }

  /** What is asked, rounded up. */
  String asked(Figure figure) {
    return one(figure.likely(), figure.unit(), Rounding.UP);
  }

  /** A value that is known within bounds only. */
  String between(Figure figure) {
    String bounds = numbers.bounds(figure.value(), figure.unit());
    if (bounds.isEmpty()) {
      return found(figure);
    }
    String[] ends = bounds.split("–", 2);
    return phrases.say(
        "between", marked(ends[0]), marked(ends[ends.length - 1] + symbol(figure.unit())));
  }

  /** An amount of money, to the nearest; a cost of a year is said without the year. */
  String money(Figure figure) {
    return phrases.say(
        "money",
        marked(numbers.plain(figure.likely(), Unit.MONEY, Rounding.NEAREST)),
        numbers.currencySign());
  }

  /** True where an amount of money is printed as more than nothing. */
  static boolean counts(Figure figure) {
    return figure.likely() >= 0.5;
  }

  /** A reading as it was taken. */
  String read(double value, Unit unit) {
    return one(value, unit, Rounding.NEAREST);
  }

  private String one(double value, Unit unit, Rounding rounding) {
    return marked(numbers.one(value, unit, rounding));
  }

  private String symbol(Unit unit) {
    return Numbers.JOIN + numbers.unit(unit);
  }

  /** Swaps the marks between digits; those of units stay. */
  private String marked(String text) {
    StringBuilder swapped = new StringBuilder(text);
    for (int at = 1; at < text.length() - 1; at++) {
      if (Character.isDigit(text.charAt(at - 1)) && Character.isDigit(text.charAt(at + 1))) {
        if (text.charAt(at) == '.') {
          swapped.setCharAt(at, decimal);
        } else if (text.charAt(at) == ',') {
          swapped.setCharAt(at, group);
        }
      }
    }
    return swapped.toString();
  }
}
