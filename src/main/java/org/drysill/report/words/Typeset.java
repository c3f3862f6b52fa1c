package org.drysill.report.words;

import java.util.regex.Pattern;

/**
 * What data files, surveys and formulas write with the keys of a keyboard, such as {@code 0.3 l/s
 * per 1 m2} or {@code 3000..9000 mm2}, as it is printed.
 */
public final class Typeset {
  private static final Pattern POWER =
      Pattern.compile("(?<![\\p{L}\\d_])(mm|cm|m|ft|in)([23])(?![\\p{L}\\d²³])");
  private static final Pattern PRODUCT = Pattern.compile("\\b(h|s|m)\\.(?=m[²³]|K\\b)");
  private static final Pattern RANGE = Pattern.compile("(?<=\\d)\\.\\.(?=\\d)");
  private static final Pattern PER_HOUR = Pattern.compile("(?<=\\d) /h at (?=\\d+ ?Pa\\b)");
  private static final Pattern LONG =
      Pattern.compile(
          "(?<![\\d.,–-])(\\d{1,3})(\\d{3})(?=(?:–\\d+)?[ \\u00a0](?:mm|m|Pa|ppm|kWh|g|h)(?![\\p{L}]))");
  private static final Pattern LONG_END =
      Pattern.compile(
          "(?<=\\d–)(\\d{1,3})(\\d{3})(?=[ \\u00a0](?:mm|m|Pa|ppm|kWh|g|h)(?![\\p{L}]))");

  private Typeset() {}

  /** A text of the long report. */
  public static String of(String written) {
    String ranged = RANGE.matcher(units(written)).replaceAll("–");
    String grouped = LONG.matcher(ranged).replaceAll("$1,$2");
    return LONG_END
        .matcher(grouped)
        .replaceAll("$1,$2")
        .replace("plus or minus ", "±" + Numbers.JOIN);
  }

  /** Units alone, for a text whose numbers a language has yet to write. */
  public static String units(String written) {
    String powers =
        POWER.matcher(written).replaceAll(m -> m.group(1) + (m.group(2).equals("2") ? "²" : "³"));
    String products = PRODUCT.matcher(powers).replaceAll("$1·");
    return PER_HOUR
        .matcher(products)
        .replaceAll(" ach at ")
        .replace("CO2", "CO₂")
        .replace("+ -", "− ");
  }
}
