package org.drysill.yaml.units;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drysill.yaml.Dimension;

/** The units of every kind of quantity, in the spellings that the trade uses. */
public final class Units {
  private static final Map<Dimension, Map<String, Symbol>> TABLE = new EnumMap<>(Dimension.class);

  static {
    UnitTable.fill(Units::define);
  }

  private Units() {}

  private static void define(Dimension dimension, Symbol symbol, String... spellings) {
    Map<String, Symbol> known = TABLE.computeIfAbsent(dimension, d -> new LinkedHashMap<>());
    known.put(fold(symbol.name()), symbol);
    for (String spelling : spellings) {
      known.put(fold(spelling), symbol);
    }
  }

  /**
   * A value in the unit in which its kind is kept.
   *
   * @param unit a spelling that the dimension knows, or empty for the kept unit
   */
  public static double toKept(Dimension dimension, String unit, double value) {
    return known(dimension, unit).kept(value);
  }

  /** A kept value in another unit; the inverse of {@link #toKept}. */
  public static double fromKept(Dimension dimension, String unit, double kept) {
    return known(dimension, unit).written(kept);
  }

  /** The units to show to people, one spelling each; none for a kind without units. */
  public static List<String> shown(Dimension dimension) {
    return TABLE.get(dimension).values().stream()
        .map(Symbol::name)
        .distinct()
        .filter(name -> !name.equals("1"))
        .toList();
  }

  /** Every spelling that a dimension knows, without spaces and in lower case. */
  public static List<String> spellings(Dimension dimension) {
    return new ArrayList<>(TABLE.get(dimension).keySet());
  }

  /** A unit by a spelling; empty where the dimension does not know it. */
  static Optional<Symbol> find(Dimension dimension, String unit) {
    if (unit.isEmpty()) {
      return Optional.of(Symbol.identity(""));
    }
    String bare =
        switch (dimension) {
          case MONEY, ENERGY_PRICE -> unit.replaceFirst("^(?:[£€$¥]|[A-Z]{3}\\b) *", "");
          default -> unit;
        };
    if (bare.isEmpty()) {
      return Optional.of(Symbol.identity(""));
    }
    return Optional.ofNullable(TABLE.get(dimension).get(fold(bare)));
  }

  /** The kinds of quantity that know a spelling, to say what a wrong unit would be right for. */
  static List<Dimension> dimensionsOf(String unit) {
    return TABLE.entrySet().stream()
        .filter(e -> e.getValue().containsKey(fold(unit)))
        .map(Map.Entry::getKey)
        .toList();
  }

  private static Symbol known(Dimension dimension, String unit) {
    return find(dimension, unit)
        .orElseThrow(() -> new IllegalArgumentException(dimension + " does not know " + unit));
  }

  private static String fold(String unit) {
    return unit.strip()
        .toLowerCase(Locale.ROOT)
        .replace('²', '2')
        .replace('³', '3')
        .replace("⁻¹", "-1")
        .replace("⁻²", "-2")
        .replace('º', '°')
        .replace("℃", "°c")
        .replace("℉", "°f")
        .replace('′', '\'')
        .replace('’', '\'')
        .replace('″', '"')
        .replace('”', '"')
        .replace('μ', 'µ')
        .replaceAll("(^|\\s+)(?:per|an?)\\s+", "/")
        .replaceAll("[\\s.()^*·⋅×]", "");
  }
}
