package org.drysill.survey.log.read;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What a column may hold, with the words by which its name is recognised: English, German, French,
 * Spanish, Italian, Dutch, Danish, Norwegian and Swedish ones, without their accents.
 */
enum ColumnKind {
  /** Date and time, or either. */
  TIME(
      "date and time",
      Set.of(),
      "time date datetime timestamp zeit datum uhrzeit zeitstempel zeitpunkt heure horodatage fecha"
          + " hora data ora tijd tijdstip tid tidspunkt dato"),
  /** Air temperature. */
  TEMPERATURE(
      "temperature",
      Set.of("°c", "°f", "degc", "degf"),
      "temperature temp temperatur temperatura temperatuur lufttemperatur raumtemperatur t ta"
          + " celsius fahrenheit"),
  /** Relative humidity. */
  HUMIDITY(
      "humidity",
      Set.of("%"),
      "humidity hum rh relhum relativehumidity feuchte luftfeuchte luftfeuchtigkeit feuchtigkeit rf"
          + " humidite hygrometrie hr humedad umidita vochtigheid luchtvochtigheid rv fugtighed"
          + " luftfugtighed fuktighet luftfuktighet"),
  /** Carbon dioxide. */
  CO2("CO2", Set.of("ppm"), "co2 eco2 carbondioxide kohlendioxid kohlenstoffdioxid");

  /** Parts of names that look like the quantity and are another. */
  private static final List<String> OTHERS =
      List.of(
          "ratio",
          "absol",
          "dewp",
          "taupunkt",
          "rosee",
          "rugiada",
          "rocio",
          "setpoint",
          "sollwert",
          "surface",
          "oberfl",
          "wetbulb",
          "enthalp",
          "battery",
          "batterie",
          "alarm");

  private static final Set<String> OTHER_WORDS =
      Set.of("dew", "wet", "min", "max", "minimum", "maximum", "abs", "std", "delta", "vpd");

  private static final int EXACT = 3;
  private static final int WORD = 2;
  private static final int HINT = 1;

  private final String label;
  private final Set<String> units;
  private final Set<String> words;

  ColumnKind(String label, Set<String> units, String words) {
    this.label = label;
    this.units = units;
    this.words = Set.of(words.split(" "));
  }

  String label() {
    return label;
  }

  /** The columns whose names fit best, by index; none where no name fits. */
  List<Integer> among(List<String> names) {
    List<Integer> best = new ArrayList<>();
    int score = HINT;
    for (int i = 0; i < names.size(); i++) {
      int fit = fit(names.get(i));
      if (fit > score) {
        best.clear();
        score = fit;
      }
      if (fit == score) {
        best.add(i);
      }
    }
    return best;
  }

  /** How well a name fits: 0 not at all, more the better. */
  int fit(String name) {
    String plain = plain(name);
    List<String> parts = Arrays.asList(plain.strip().split("[^a-z0-9]+"));
    String joined = String.join("", parts);
    if (OTHERS.stream().anyMatch(joined::contains)
        || parts.stream().anyMatch(OTHER_WORDS::contains)) {
      return 0;
    }
    if (words.contains(withoutUnit(plain))) {
      return EXACT;
    }
    if (parts.stream().anyMatch(words::contains) || words.contains(joined)) {
      return WORD;
    }
    boolean within = words.stream().anyMatch(w -> w.length() >= 4 && joined.contains(w));
    return within || units.stream().anyMatch(plain::contains) ? HINT : 0;
  }

  /** Lower case, accents and subscripts taken away. */
  private static String plain(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFKD)
        .replaceAll("\\p{M}+", "")
        .toLowerCase(Locale.ROOT);
  }

  private static String withoutUnit(String plain) {
    return plain.replaceAll("[(\\[].*|°[cf]?|%", "").replaceAll("[^a-z0-9]+", "");
  }
}
