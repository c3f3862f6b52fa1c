package org.drysill.report.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Unit;
import org.drysill.yaml.Key;

/**
 * What the schema says of keys beyond their types: what they mean and in which units figures are
 * kept. The meanings are those of the records' own comments; a test holds the two together.
 */
final class ResultTexts {
  private static final Pattern UNIT_OF_THE_CODE = Pattern.compile("\\s*\\[[^\\]]*\\]");
  private static final String ANY = "ANY";

  private final Properties meanings;
  private final Properties units;

  ResultTexts(Properties meanings, Properties units) {
    this.meanings = meanings;
    this.units = units;
  }

  static ResultTexts bundled() {
    return new ResultTexts(read("meanings.properties"), read("units.properties"));
  }

  static Properties read(String name) {
    Properties properties = new Properties();
    try (InputStream in = ResultTexts.class.getResourceAsStream(name);
        InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      properties.load(reader);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return properties;
  }

  /** The name of a type in both files: what follows the name of the project. */
  static String name(Class<?> type) {
    return type.getName().replace('$', '.').substring("org.drysill.".length());
  }

  /** What a type of record is. */
  String about(Class<?> type) {
    return sentence(said(meanings, name(type)));
  }

  /**
   * What a component is.
   *
   * @param type the record
   * @param component the component's name
   * @param told the units in which it stands in the file; none where it is no figure
   */
  String about(Class<?> type, String component, List<JsonUnit> told) {
    Optional<String> key =
        Arrays.stream(type.getRecordComponents())
            .filter(part -> part.getName().equals(component))
            .map(part -> part.getAnnotation(Key.class))
            .flatMap(Stream::ofNullable)
            .map(Key::about)
            .filter(about -> !about.isEmpty())
            .findFirst();
    String meaning = key.orElseGet(() -> said(meanings, name(type) + "." + component));
    if (told.isEmpty()) {
      return sentence(meaning);
    }
    String words =
        told.stream().map(JsonUnit::words).distinct().collect(Collectors.joining(" or "));
    return sentence(UNIT_OF_THE_CODE.matcher(meaning).replaceAll("")) + " Unit: " + words + ".";
  }

  /** The units in which a component's figures stand in the file; any where none is kept. */
  List<JsonUnit> units(Class<?> type, String component) {
    String listed = units.getProperty(name(type) + "." + component);
    String names = listed == null ? ANY : listed;
    Stream<Unit> all =
        names.equals(ANY)
            ? Arrays.stream(Unit.values())
            : Arrays.stream(names.split(" ")).map(Unit::valueOf);
    return all.map(JsonUnit::of).toList();
  }

  private static String said(Properties texts, String key) {
    String text = texts.getProperty(key);
    if (text == null) {
      throw new IllegalStateException("nothing is said of " + key);
    }
    return text;
  }

  private static String sentence(String words) {
    String capital = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    return capital.endsWith(".") ? capital : capital + ".";
  }
}
