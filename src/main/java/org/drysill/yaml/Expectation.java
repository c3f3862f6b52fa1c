package org.drysill.yaml;

import java.util.List;
import java.util.stream.Collectors;
import org.drysill.yaml.units.Units;

/** Says in words what would be right at a place of a file. */
final class Expectation {
  private static final int MOST_WORDS = 14;
  private static final int MOST_UNITS = 4;

  private Expectation() {}

  /** What the key is about, what may stand there, and an example. */
  static String of(Shape shape, Key key) {
    String example = key.example().isEmpty() ? "" : ", such as " + key.example();
    return about(key) + form(shape.unwrapped(), key) + example;
  }

  /** What the key is about, with a colon; nothing where the record does not say. */
  static String about(Key key) {
    return key.about().isEmpty() ? "" : lowerFirst(key.about()) + ": ";
  }

  private static String form(Shape shape, Key key) {
    return switch (shape.kind()) {
      case TEXT -> key.file() ? "the path of a file" : "a text";
      case FLAG -> "yes or no";
      case WHOLE -> "a whole number";
      case DECIMAL, QUANTITY -> "a number" + units(key.dimension());
      case DAY -> "a date as YYYY-MM-DD";
      case MOMENT -> "a date and time as YYYY-MM-DDThh:mm";
      case WORD -> "one of " + some(shape.words().stream().map(Worded::word).toList());
      case RECORD -> keys(shape);
      case OPTIONAL, LIST -> "a list of entries, each on a line that begins with -";
      case MAP -> "keys with values";
    };
  }

  private static String keys(Shape shape) {
    return "the keys " + some(RecordType.of(shape.type()).names());
  }

  private static String units(Dimension dimension) {
    List<String> units = Units.shown(dimension);
    return units.isEmpty()
        ? ""
        : " in " + units.stream().limit(MOST_UNITS).collect(Collectors.joining(", "));
  }

  /** The first words of a list, and how many more there are. */
  static String some(List<String> words) {
    String shown = words.stream().limit(MOST_WORDS).collect(Collectors.joining(", "));
    int more = words.size() - MOST_WORDS;
    return more > 0 ? shown + " and " + more + " more" : shown;
  }

  private static String lowerFirst(String about) {
    boolean acronym =
        about.length() > 1 && !Character.isLowerCase(about.charAt(1)) && about.charAt(1) != ' ';
    return acronym ? about : Character.toLowerCase(about.charAt(0)) + about.substring(1);
  }
}
