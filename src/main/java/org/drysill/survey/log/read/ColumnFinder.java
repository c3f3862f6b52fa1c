package org.drysill.survey.log.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.survey.LoggerColumns;
import org.drysill.survey.log.DateOrder;
import org.drysill.survey.log.LogCode;
import org.drysill.yaml.Nearest;

/**
 * Finds the columns of a table: by the names that the survey gives, else by the words that their
 * names hold. Where the survey names a column of values, no other is guessed, for a file may hold
 * several rooms.
 */
final class ColumnFinder {
  private final Table table;
  private final Refusals refusals;
  private final Map<String, String> told = new LinkedHashMap<>();

  ColumnFinder(Table table, Refusals refusals) {
    this.table = table;
    this.refusals = refusals;
  }

  /** The names of the columns that were found, by what they hold. */
  Map<String, String> told() {
    return told;
  }

  Columns find(Optional<LoggerColumns> named) throws LogRefused {
    if (table.names().isEmpty()) {
      throw refusals.at(
          table.firstRow(),
          LogCode.COLUMN_NOT_FOUND,
          "readings with nothing above them",
          "a line with the names of the columns above the first reading");
    }
    Optional<String> date = named.flatMap(LoggerColumns::date);
    Optional<String> time = named.flatMap(LoggerColumns::time);
    int first = date.or(() -> time).isPresent() ? byName(date.or(() -> time).get()) : time();
    int clock = date.isPresent() && time.isPresent() ? byName(time.get()) : timeOfDay(first);
    note("time", first);
    note("time of day", clock);
    return values(named, first, clock);
  }

  private Columns values(Optional<LoggerColumns> named, int first, int clock) throws LogRefused {
    Optional<String> temperature = named.flatMap(LoggerColumns::temperature);
    Optional<String> humidity = named.flatMap(LoggerColumns::humidity);
    Optional<String> co2 = named.flatMap(LoggerColumns::co2);
    boolean guess =
        Stream.of(temperature, humidity, co2).flatMap(Optional::stream).findAny().isEmpty();
    Columns columns =
        new Columns(
            first,
            clock,
            value(temperature, ColumnKind.TEMPERATURE, guess),
            value(humidity, ColumnKind.HUMIDITY, guess),
            value(co2, ColumnKind.CO2, guess));
    if (columns.temperature() + columns.humidity() + columns.co2() == 3 * Columns.NONE) {
      throw refusals.at(
          table.headerLine(),
          LogCode.COLUMN_NOT_FOUND,
          "columns named " + names(),
          "a column of temperature, humidity or CO2, or their names in the survey");
    }
    return columns;
  }

  private int value(Optional<String> named, ColumnKind kind, boolean guess) throws LogRefused {
    int column = named.isPresent() ? byName(named.get()) : guess ? byWords(kind) : Columns.NONE;
    note(kind.label(), column);
    return column;
  }

  private void note(String label, int column) {
    if (column != Columns.NONE) {
      told.put(label, table.names().get(column).strip());
    }
  }

  private int byName(String name) throws LogRefused {
    List<Integer> exact = indexes(column -> column.equals(name.strip()));
    List<Integer> found =
        exact.isEmpty() ? indexes(column -> column.equalsIgnoreCase(name.strip())) : exact;
    if (found.size() == 1) {
      return found.get(0);
    }
    if (found.size() > 1) {
      throw refusals.at(
          table.headerLine(),
          LogCode.SEVERAL_COLUMNS,
          found.size() + " columns named \"" + name + '"',
          "a name of its own for each column");
    }
    throw refusals.at(
        table.headerLine(),
        LogCode.NO_SUCH_COLUMN,
        "no column \"" + name + '"',
        "one of the columns " + names(),
        Nearest.of(name, table.names().stream().map(String::strip).toList()));
  }

  private List<Integer> indexes(Predicate<String> fits) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < table.names().size(); i++) {
      if (fits.test(table.names().get(i).strip())) {
        found.add(i);
      }
    }
    return found;
  }

  private int byWords(ColumnKind kind) throws LogRefused {
    List<Integer> found = kind.among(table.names());
    if (found.size() > 1) {
      throw refusals.at(
          table.headerLine(),
          LogCode.SEVERAL_COLUMNS,
          found.stream().map(i -> '"' + table.names().get(i).strip() + '"').collect(joined()),
          "one column of " + kind.label() + ", or its name in the survey");
    }
    return found.isEmpty() ? Columns.NONE : found.get(0);
  }

  /** A column whose name says time and whose fields are times; else the first whose fields are. */
  private int time() throws LogRefused {
    List<Integer> dated = new ArrayList<>();
    for (int i = 0; i < table.names().size(); i++) {
      if (holdsDates(i)) {
        dated.add(i);
      }
    }
    if (dated.isEmpty()) {
      throw refusals.at(
          table.headerLine(),
          LogCode.COLUMN_NOT_FOUND,
          "columns named " + names(),
          "a column of dates and times, or its name in the survey");
    }
    return dated.stream()
        .filter(i -> ColumnKind.TIME.fit(table.names().get(i)) > 0)
        .findFirst()
        .orElse(dated.get(0));
  }

  /** The column of the time of day, where the dates have none with them. */
  private int timeOfDay(int date) {
    if (mostly(date, (clock, text) -> clock.read(text, 0, text.length) && clock.isTimed())) {
      return Columns.NONE;
    }
    for (int i = 0; i < table.names().size(); i++) {
      if (i != date && mostly(i, ColumnFinder::isTimeOfDay)) {
        return i;
      }
    }
    return Columns.NONE;
  }

  private static boolean isTimeOfDay(ClockText clock, char[] text) {
    return new String(text).indexOf(':') > 0
        && !clock.read(text, 0, text.length)
        && new ClockText(DateOrder.YEAR_MONTH_DAY).readTimeOfDay(text, 0, text.length);
  }

  private boolean holdsDates(int column) {
    return mostly(column, (clock, text) -> clock.read(text, 0, text.length));
  }

  private interface Check {
    boolean holds(ClockText clock, char[] text);
  }

  /** True where most of the readings pass, in one order of dates at least. */
  private boolean mostly(int column, Check check) {
    for (DateOrder order : DateOrder.values()) {
      long passed =
          table.readings().stream()
              .filter(r -> r.size() > column)
              .filter(r -> check.holds(new ClockText(order), r.get(column).toCharArray()))
              .count();
      if (2 * passed > table.readings().size()) {
        return true;
      }
    }
    return false;
  }

  private String names() {
    return table.names().stream()
        .map(String::strip)
        .filter(name -> !name.isEmpty())
        .map(name -> '"' + name + '"')
        .collect(joined());
  }

  private static Collector<CharSequence, ?, String> joined() {
    return Collectors.joining(", ");
  }
}
