package org.drysill.report.language;

import java.util.Locale;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.physics.Range;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.Tick;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;

/** The numbers of the report with the marks and the units of a language: same digits. */
public final class LocalNumbers {
  private final Numbers numbers;
  private final char decimal;
  private final char group;
  private final Phrases phrases;

  /** Numbers of a jurisdiction in the words of a language. */
  public LocalNumbers(Numbers numbers, Phrases phrases) {
    this.numbers = numbers;
    this.phrases = phrases;
    this.decimal = phrases.say("number.decimal").charAt(0);
    this.group = phrases.say("number.group").charAt(0);
  }

  /** What is there, rounded down, for a sentence: a whole number has no decimals. */
  public String found(Figure figure) {
    return inSentence(figure, Rounding.DOWN);
  }

  /** What is asked, rounded up, for a sentence as well. */
  public String asked(Figure figure) {
    return inSentence(figure, Rounding.UP);
  }

  private String inSentence(Figure figure, Rounding rounding) {
    String number = numbers.plain(figure.likely(), figure.unit(), rounding);
    String said = number.endsWith(".0") ? number.substring(0, number.length() - 2) : number;
    return joined(marked(said), figure.unit());
  }

  /** A value that is known within bounds only. */
  public String between(Figure figure) {
    String bounds = numbers.bounds(figure.value(), figure.unit());
    if (bounds.isEmpty()) {
      return found(figure);
    }
    String[] ends = bounds.split("–", 2);
    return phrases.say(
        "between", marked(ends[0]), joined(marked(ends[ends.length - 1]), figure.unit()));
  }

  /** An amount of money, to the nearest; a cost of a year is said without the year. */
  public String money(Figure figure) {
    return money(figure.likely());
  }

  /** An amount of money in the currency of the survey, to the nearest. */
  public String money(double amount) {
    return phrases.say(
        "money",
        marked(numbers.plain(amount, Unit.MONEY, Rounding.NEAREST)),
        numbers.currencySign());
  }

  /** True where an amount of money is printed as more than nothing. */
  public static boolean counts(Figure figure) {
    return figure.likely() >= 0.5;
  }

  /** A reading as it was taken. */
  public String read(double value, Unit unit) {
    return one(value, unit, Rounding.NEAREST);
  }

  /** The likely value without its unit, to the nearest. */
  public String plain(Figure figure) {
    return plain(figure.likely(), figure.unit(), Rounding.NEAREST);
  }

  /** A value without its unit. */
  public String plain(double value, Unit unit, Rounding rounding) {
    return marked(numbers.plain(value, unit, rounding));
  }

  /** The bounds without their unit, such as {@code 15–26}; empty where there are none in print. */
  public String bounds(Range value, Unit unit) {
    return spanned(numbers.bounds(value, unit));
  }

  /** The likely value with its bounds and its unit. */
  public String full(Figure figure) {
    return full(figure, Rounding.NEAREST);
  }

  /** The same with the likely value rounded to a side. */
  public String full(Figure figure, Rounding rounding) {
    return joined(spanned(numbers.spread(figure.value(), figure.unit(), rounding)), figure.unit());
  }

  /** The same with the digits that someone needs who redoes a calculation. */
  public String worked(Range value, Unit unit) {
    return joined(spanned(numbers.workedPlain(value, unit)), unit);
  }

  /** The unit of a column; empty for a plain number. */
  public String unit(Unit unit) {
    String symbol = numbers.unit(unit);
    return phrases.find("unit." + symbol.replace(' ', '-').replace('\u00a0', '-')).orElse(symbol);
  }

  /** The value in printed units, for an axis. */
  public double onAxis(double value, Unit unit) {
    return numbers.onAxis(value, unit);
  }

  /** The range in printed units, for an axis. */
  public Range onAxis(Range value, Unit unit) {
    return numbers.onAxis(value, unit);
  }

  /** An axis with the marks of the language. */
  public Axis marked(Axis axis) {
    return new Axis(
        axis.min(),
        axis.max(),
        axis.ticks().stream().map(t -> new Tick(t.at(), marked(t.label()))).toList());
  }

  /** Swaps the marks between digits; those of units stay. */
  public String marked(String text) {
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

  /** Bounds of which one is below nought stand apart by a word. */
  private String spanned(String text) {
    String to = Numbers.JOIN + "to" + Numbers.JOIN;
    return marked(text).replace(to, Numbers.JOIN + phrases.say("number.to") + Numbers.JOIN);
  }

  private String one(double value, Unit unit, Rounding rounding) {
    return joined(plain(value, unit, rounding), unit);
  }

  private String joined(String number, Unit unit) {
    if (unit == Unit.MONEY || unit == Unit.MONEY_PER_YEAR || unit == Unit.ENERGY_PRICE) {
      String amount = phrases.say("money", number, numbers.currencySign());
      return unit == Unit.MONEY
          ? amount
          : phrases.say("money." + unit.name().toLowerCase(Locale.ROOT), amount);
    }
    String symbol = unit(unit);
    return symbol.isEmpty() ? number : number + Numbers.JOIN + symbol.replace(" ", Numbers.JOIN);
  }
}
