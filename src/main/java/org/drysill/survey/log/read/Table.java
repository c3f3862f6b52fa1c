package org.drysill.survey.log.read;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.survey.log.DateOrder;

/**
 * The table within the first part of a file: the names of its columns and its first readings. A
 * reading is a row with a time and a number; the delimiter is the one that makes most readings.
 *
 * @param delimiter what stands between fields
 * @param headerLine the line of the names, from 1; 0 where there are none
 * @param firstRow the line of the first reading, from 1
 * @param names the names as they stand above the columns, with their units where these have a line
 *     of their own; an empty one above a column that has no name
 * @param readings the fields of the first readings
 */
record Table(
    char delimiter, int headerLine, int firstRow, List<String> names, List<List<String>> readings) {
  private static final char[] USUAL = {',', ';', '\t', '|'};
  private static final int LINES_ABOVE = 3;

  /** More lines than any preamble has, and enough readings to tell the delimiter by. */
  private static final int LINES = 500;

  Table {
    names = List.copyOf(names);
    readings = List.copyOf(readings);
  }

  /** Finds it; empty where no line is a reading. */
  static Optional<Table> in(List<String> lines, Optional<Character> stated) {
    Stream<Character> marks =
        stated.map(Stream::of).orElseGet(() -> new String(USUAL).chars().mapToObj(c -> (char) c));
    return marks
        .map(mark -> with(mark, lines))
        .flatMap(Optional::stream)
        .max(Comparator.comparingInt(table -> table.readings().size()));
  }

  private static Optional<Table> with(char delimiter, List<String> lines) {
    List<List<String>> rows =
        lines.stream().limit(LINES).map(line -> fields(line, delimiter)).toList();
    List<List<String>> readings = rows.stream().filter(Table::isReading).toList();
    if (readings.isEmpty()) {
      return Optional.empty();
    }
    int first = rows.indexOf(readings.get(0));
    int header = header(rows, first);
    List<String> names = header < 0 ? List.of() : names(rows, header, first);
    return Optional.of(new Table(delimiter, header + 1, first + 1, names, readings));
  }

  /** Of the lines just above the readings, the one with most names that are known. */
  private static int header(List<List<String>> rows, int first) {
    int best = -1;
    long most = -1;
    for (int i = first - 1, seen = 0; i >= 0 && seen < LINES_ABOVE; i--) {
      if (rows.get(i).size() < 2) {
        continue;
      }
      seen++;
      long known = rows.get(i).stream().filter(Table::isKnown).count();
      if (known > most) {
        best = i;
        most = known;
      }
    }
    return best;
  }

  private static boolean isKnown(String name) {
    return Arrays.stream(ColumnKind.values()).anyMatch(kind -> kind.fit(name) > 1);
  }

  private static List<String> names(List<List<String>> rows, int header, int first) {
    List<String> names = new ArrayList<>(rows.get(header));
    for (List<String> units : rows.subList(header + 1, first)) {
      for (int i = 0; units.size() == names.size() && i < units.size(); i++) {
        names.set(i, (names.get(i).strip() + " " + units.get(i).strip()).strip());
      }
    }
    if (hasLeadingNumber(names, rows.get(first))) {
      names.add(0, "");
    }
    return names;
  }

  /** Some programs write the number of the row before each, and no name above it. */
  private static boolean hasLeadingNumber(List<String> names, List<String> reading) {
    return reading.size() == names.size() + 1
        && reading.get(0).strip().matches("\\d+")
        && !reading.get(reading.size() - 1).isBlank();
  }

  private static boolean isReading(List<String> fields) {
    boolean timed = false;
    boolean numbered = false;
    for (String field : fields) {
      boolean time = isTime(field);
      timed |= time;
      numbered |= !time && isNumber(field);
    }
    return timed && numbered;
  }

  private static boolean isTime(String field) {
    char[] text = field.toCharArray();
    return Arrays.stream(DateOrder.values())
        .anyMatch(order -> new ClockText(order).read(text, 0, text.length));
  }

  private static boolean isNumber(String field) {
    return isNumber(field, '.') || isNumber(field, ',');
  }

  private static boolean isNumber(String field, char mark) {
    char[] text = field.toCharArray();
    return Double.isFinite(new DecimalText(mark).read(text, 0, text.length));
  }

  private static List<String> fields(String line, char delimiter) {
    if (line.isBlank()) {
      return List.of();
    }
    try {
      return CsvReader.builder()
          .fieldSeparator(delimiter)
          .allowExtraCharsAfterClosingQuote(true)
          .ofSingleCsvRecord(line)
          .getFields();
    } catch (CsvParseException broken) {
      return List.of(line);
    }
  }
}
