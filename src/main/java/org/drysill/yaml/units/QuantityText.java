package org.drysill.yaml.units;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Quantity;
import org.drysill.yaml.units.QuantityException.Fault;

/**
 * A quantity as a person writes it: {@code 11 l/s}, {@code 8..12 /h}, {@code 8 to 12 /h}, {@code
 * 20.0 C ± 0.5 K}, {@code 54 m3/h ± 10 %}. The unit may be written once or twice; a bare number has
 * the unit that the caller gives.
 *
 * @param quantity the quantity in the kept unit
 * @param uncertain true where the bounds come from an uncertainty rather than from a range
 */
public record QuantityText(Quantity quantity, boolean uncertain) {
  private static final Pattern UNCERTAIN = Pattern.compile("(.+?)(?:±|\\+/-|\\+-)(.*)");
  private static final Pattern RANGE =
      Pattern.compile(
          "(.+?)(?:\\s*(?:\\.{2,3}|…|–|—)\\s*|\\s+to\\s+|\\s+-\\s+|(?<=\\d)-(?=\\d)(?!\\d+/\\d))"
              + "(.*)");
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          "(?<feet>\\S+?) ?(?:ft|feet|foot|['′’]) ?(?<inches>\\d.*?) ?(?:in|ins|inch|inches|[\"″”])");
  private static final Pattern CURRENCY_FIRST =
      Pattern.compile("(?<currency>[£€$¥]|[A-Z]{3}\\b) ?(?<amount>[^/]*\\d)(?<unit>.*)");

  /**
   * Reads a quantity.
   *
   * @param text the text
   * @param dimension the kind that it should be
   * @param unit the unit of a bare number; empty for the kept unit
   * @throws QuantityException if the text is not one
   */
  public static QuantityText of(String text, Dimension dimension, String unit)
      throws QuantityException {
    String written = text.strip();
    Reader reader = new Reader(dimension, unit, written);
    return isPlain(written) ? reader.plain(Double.parseDouble(written)) : reader.read();
  }

  /** Digits with a point among them at most, as most numbers of files are. */
  private static boolean isPlain(String text) {
    int points = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '.' && i > 0 && i + 1 < text.length()) {
        points++;
      } else if (c < '0' || c > '9') {
        return false;
      }
    }
    return points <= 1 && !text.isEmpty();
  }

  /** A number and its unit; no unit where none is written. */
  private record Term(double number, Optional<Symbol> symbol) {}

  private record Reader(Dimension dimension, String unit, String written) {
    QuantityText read() throws QuantityException {
      String text = written.replaceAll("\\p{Z}+|\\s+", " ").replace('−', '-');
      Matcher uncertain = UNCERTAIN.matcher(text);
      if (uncertain.matches()) {
        return around(uncertain.group(1).strip(), uncertain.group(2).strip());
      }
      Matcher range = RANGE.matcher(text);
      if (range.matches()) {
        return between(range.group(1).strip(), range.group(2).strip());
      }
      return exactly(kept(term(text, dimension), bare()));
    }

    /** A number without a unit. */
    QuantityText plain(double number) {
      return exactly(bare().kept(number));
    }

    private QuantityText exactly(double value) {
      return new QuantityText(new Quantity(value, value, value, written), false);
    }

    private QuantityText between(String first, String second) throws QuantityException {
      Term from = term(first, dimension);
      Term to = term(second, dimension);
      double low = kept(from, to.symbol().orElse(bare()));
      double high = kept(to, from.symbol().orElse(bare()));
      if (low > high) {
        throw new QuantityException(Fault.BACKWARDS, "the lower number comes first in a range");
      }
      return new QuantityText(new Quantity(low + (high - low) / 2, low, high, written), false);
    }

    private QuantityText around(String middle, String give) throws QuantityException {
      Term centre = term(middle, dimension);
      double value;
      double spread;
      if (give.endsWith("%") && isRelative()) {
        value = kept(centre, bare());
        spread = Math.abs(value) * NumberText.of(give).value() / 100;
      } else {
        Term by = term(give, differences());
        value = kept(centre, scaleOf(by));
        spread =
            by.symbol().or(() -> differenceOf(centre)).orElse(bare()).keptDifference(by.number);
      }
      if (spread < 0) {
        throw new QuantityException(Fault.BACKWARDS, "an uncertainty is not negative");
      }
      return new QuantityText(new Quantity(value, value - spread, value + spread, written), true);
    }

    /** True where a percentage is part of the value, and not points of the same scale. */
    private boolean isRelative() {
      return dimension != Dimension.TEMPERATURE && Units.find(dimension, "%").isEmpty();
    }

    /** What ± counts in: a spread of temperatures is a difference, with no zero point. */
    private Dimension differences() {
      return dimension == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_DIFFERENCE : dimension;
    }

    private Optional<Symbol> differenceOf(Term centre) {
      return centre.symbol().flatMap(s -> Units.find(differences(), s.name()));
    }

    /** The unit of a bare centre: that of its uncertainty, unless it is K beside a scale. */
    private Symbol scaleOf(Term by) {
      return by.symbol()
          .filter(s -> dimension != Dimension.TEMPERATURE || !s.name().equals("K"))
          .flatMap(s -> Units.find(dimension, s.name()))
          .orElse(bare());
    }

    private Symbol bare() {
      return Units.find(dimension, unit)
          .orElseThrow(() -> new IllegalArgumentException(dimension + " does not know " + unit));
    }

    private double kept(Term term, Symbol otherwise) {
      return term.symbol().orElse(otherwise).kept(term.number());
    }

    private Term term(String text, Dimension kind) throws QuantityException {
      Matcher both = FEET_AND_INCHES.matcher(text);
      if (kind == Dimension.LENGTH && both.matches()) {
        double feet = NumberText.of(both.group("feet")).value();
        NumberText inches = NumberText.of(both.group("inches"));
        double metres = Units.toKept(kind, "ft", feet) + Units.toKept(kind, "in", inches.value());
        return new Term(metres, Optional.of(Symbol.identity("m")));
      }
      Matcher price = CURRENCY_FIRST.matcher(text);
      boolean money = kind == Dimension.MONEY || kind == Dimension.ENERGY_PRICE;
      NumberText number =
          NumberText.of(
              money && price.matches() ? price.group("amount") + price.group("unit") : text);
      return new Term(number.value(), symbol(number.rest(), kind));
    }

    private Optional<Symbol> symbol(String spelling, Dimension kind) throws QuantityException {
      if (spelling.isEmpty()) {
        return Optional.empty();
      }
      Optional<Symbol> symbol = Units.find(kind, spelling);
      if (symbol.isEmpty()) {
        throw new QuantityException(Fault.WRONG_UNIT, wrongUnit(spelling));
      }
      return symbol;
    }

    private static String wrongUnit(String spelling) {
      return Units.dimensionsOf(spelling).stream()
          .findFirst()
          .map(d -> spelling + " is a unit of " + d.name().toLowerCase(Locale.ROOT))
          .orElse("the unit " + spelling + " is not known here")
          .replace('_', ' ');
    }
  }
}
