package org.drysill.report.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.drysill.assess.Figure;
import org.drysill.assess.MoneyText;
import org.drysill.assess.Unit;
import org.drysill.physics.Range;

/**
 * Numbers for readers. A number and its unit are joined by no-break spaces, and so are the likely
 * value and its bounds; the page keeps what is so joined on one line.
 */
public final class Numbers {
  /** Joins what must stay on one line. */
  public static final String JOIN = "\u00a0";

  private static final int LONG_UNIT = 14;
  private static final String MINUS = "\u2212";
  private final UnitSystem system;
  private final String currency;
  private final Ear ear;

  /**
   * Numbers in the units of a jurisdiction.
   *
   * @param system its units
   * @param currency the currency code of the survey
   */
  public Numbers(UnitSystem system, String currency) {
    this(system, currency, Ear.NONE);
  }

  private Numbers(UnitSystem system, String currency, Ear ear) {
    this.system = system;
    this.currency = currency;
    this.ear = ear;
  }

  /** The same, with someone who hears of every value that they put into words. */
  public Numbers heardBy(Ear listener) {
    return new Numbers(system, currency, listener);
  }

  private String told(Range kept, Unit unit, String text) {
    ear.heard(kept, unit, text);
    return text;
  }

  /** The unit of a column, such as {@code l/s}; empty for a plain number. */
  public String unit(Unit unit) {
    return switch (unit) {
      case MONEY -> currencySign();
      case MONEY_PER_YEAR -> currencySign() + JOIN + "a" + JOIN + "year";
      case ENERGY_PRICE -> currencySign() + "/kWh";
      default -> PrintedUnit.of(unit, system).symbol();
    };
  }

  /** The likely value without its unit. */
  public String plain(double kept, Unit unit, Rounding rounding) {
    PrintedUnit printed = PrintedUnit.of(unit, system);
    double value = printed.convert(kept);
    return told(Range.exactly(kept), unit, text(value, printed.decimals().of(value), rounding));
  }

  /** The likely value without its unit, to the nearest. */
  public String plain(Figure figure) {
    return plain(figure.likely(), figure.unit(), Rounding.NEAREST);
  }

  /** The likely value with its unit, to the nearest. */
  public String likely(Figure figure) {
    return one(figure.likely(), figure.unit());
  }

  /** One value with its unit, to the nearest. */
  public String one(double kept, Unit unit) {
    return one(kept, unit, Rounding.NEAREST);
  }

  /** One value with its unit. */
  public String one(double kept, Unit unit, Rounding rounding) {
    return told(Range.exactly(kept), unit, withUnit(plain(kept, unit, rounding), unit));
  }

  /** The value with its bounds and without its unit, such as {@code 20 (15–26)}. */
  public String spread(Range kept, Unit unit) {
    return spread(kept, unit, Rounding.NEAREST);
  }

  /** The same with the likely value rounded to a side. */
  public String spread(Range kept, Unit unit, Rounding rounding) {
    String likely = plain(kept.likely(), unit, rounding);
    String bounds = bounds(kept, unit);
    return bounds.isEmpty() ? likely : told(kept, unit, likely + JOIN + "(" + bounds + ")");
  }

  /** The bounds, such as {@code 15–26}; empty where they would print as the likely value. */
  public String bounds(Range kept, Unit unit) {
    PrintedUnit printed = PrintedUnit.of(unit, system);
    double likely = printed.convert(kept.likely());
    int decimals = printed.decimals().of(likely);
    String low = text(printed.convert(kept.low()), decimals, Rounding.NEAREST);
    String high = text(printed.convert(kept.high()), decimals, Rounding.NEAREST);
    if (low.equals(high)) {
      return "";
    }
    return between(low, high);
  }

  private static String between(String low, String high) {
    boolean negative = low.startsWith(MINUS) || high.startsWith(MINUS);
    return low + (negative ? JOIN + "to" + JOIN : "–") + high;
  }

  /** The value with its bounds and its unit, such as {@code 20 (15–26) l/s}. */
  public String full(Range kept, Unit unit) {
    return full(kept, unit, Rounding.NEAREST);
  }

  /** The same with the likely value rounded to a side. */
  public String full(Range kept, Unit unit, Rounding rounding) {
    return told(kept, unit, withUnit(spread(kept, unit, rounding), unit));
  }

  /**
   * The value with its bounds and its unit, with the digits that someone needs who redoes a
   * calculation: three that count, of the value or of what it is uncertain by where that is more.
   */
  public String worked(Range kept, Unit unit) {
    return withUnit(workedPlain(kept, unit), unit);
  }

  /** The same without its unit. */
  public String workedPlain(Range kept, Unit unit) {
    PrintedUnit printed = PrintedUnit.of(unit, system);
    double likely = printed.convert(kept.likely());
    double half = (printed.convert(kept.high()) - printed.convert(kept.low())) / 2;
    int usual = printed.decimals().of(likely);
    int decimals = Decimals.worked(Math.max(Math.abs(likely), half), usual);
    String number = worked(likely, decimals, usual);
    String low = worked(printed.convert(kept.low()), decimals, usual);
    String high = worked(printed.convert(kept.high()), decimals, usual);
    return low.equals(high) ? number : number + JOIN + "(" + between(low, high) + ")";
  }

  /** Without the zeros at its end that the usual print would not have. */
  private static String worked(double value, int decimals, int usual) {
    String text = text(value, decimals, Rounding.NEAREST);
    int end = text.length();
    int least = text.indexOf('.') < 0 ? end : text.indexOf('.') + 1 + usual;
    while (end > least && text.charAt(end - 1) == '0') {
      end--;
    }
    return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
  }

  /** The value with its bounds and its unit. */
  public String full(Figure figure) {
    return full(figure.value(), figure.unit());
  }

  /** The bounds alone with their unit, such as {@code 15–26 l/s}; the value where it has none. */
  public String between(Figure figure) {
    String bounds = bounds(figure.value(), figure.unit());
    return bounds.isEmpty()
        ? likely(figure)
        : told(figure.value(), figure.unit(), withUnit(bounds, figure.unit()));
  }

  /** The value in printed units, for an axis. */
  public double onAxis(double kept, Unit unit) {
    return PrintedUnit.of(unit, system).convert(kept);
  }

  /** The range in printed units, for an axis. */
  public Range onAxis(Range kept, Unit unit) {
    return new Range(
        onAxis(kept.low(), unit), onAxis(kept.likely(), unit), onAxis(kept.high(), unit));
  }

  private String withUnit(String number, Unit unit) {
    return switch (unit) {
      case MONEY -> money(number);
      case MONEY_PER_YEAR -> money(number) + JOIN + "a" + JOIN + "year";
      case ENERGY_PRICE -> money(number) + "/kWh";
      default -> {
        String symbol = PrintedUnit.of(unit, system).symbol();
        yield symbol.isEmpty() ? number : number + (isLong(symbol) ? " " : JOIN) + joined(symbol);
      }
    };
  }

  /** A unit in words may stand on the next line, where a column is narrow. */
  private static boolean isLong(String symbol) {
    return symbol.length() > LONG_UNIT;
  }

  private static String joined(String symbol) {
    return isLong(symbol) ? symbol : symbol.replace(" ", JOIN);
  }

  /** The sign of the currency where it has a usual one, else its code. */
  public String currencySign() {
    return new MoneyText(currency).sign();
  }

  private String money(String number) {
    MoneyText text = new MoneyText(currency);
    return number.startsWith(MINUS) ? MINUS + text.of(number.substring(1)) : text.of(number);
  }

  static String text(double value, int decimals, Rounding rounding) {
    if (Double.isInfinite(value)) {
      return value > 0 ? "∞" : MINUS + "∞";
    }
    BigDecimal rounded = rounding.apply(value, decimals);
    if (rounded.signum() == 0) {
      return rounded.setScale(Math.max(0, decimals), RoundingMode.UNNECESSARY).toPlainString();
    }
    String digits = grouped(rounded.abs().toPlainString());
    return rounded.signum() < 0 ? MINUS + digits : digits;
  }

  private static String grouped(String digits) {
    int end = digits.indexOf('.') < 0 ? digits.length() : digits.indexOf('.');
    StringBuilder text = new StringBuilder(digits);
    for (int at = end - 3; at > 0; at -= 3) {
      text.insert(at, ',');
    }
    return text.toString();
  }
}
