package org.drysill.survey.log.read;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.drysill.survey.Logger;
import org.drysill.survey.TemperatureUnit;
import org.drysill.survey.log.DateOrder;
import org.drysill.survey.log.LogCode;
import org.drysill.survey.log.LogLayout;
import org.drysill.survey.log.LogLimits;

/** Tells how a file is written, from what the survey says of it and from its first part. */
final class LayoutFinder {
  private static final Pattern OFFSET = Pattern.compile("(?:GMT|UTC) ?([+-]\\d{1,2}(?::?\\d\\d)?)");
  private static final Pattern FAHRENHEIT =
      Pattern.compile("(?i)°\\s*f|℉|\\bdeg\\.?\\s*f\\b|fahrenheit|[(\\[]f[)\\]]|[_ ]f$");
  private static final Pattern CELSIUS =
      Pattern.compile("(?i)°\\s*c|℃|\\bdeg\\.?\\s*c\\b|celsius|[(\\[]c[)\\]]|[_ ]c$");

  private final Logger logger;
  private final FirstPart part;
  private final Refusals refusals;
  private final LogLimits limits;
  private final Optional<ZoneId> zoneOfOthers;
  private Table table;
  private Columns columns;

  LayoutFinder(Logger logger, FirstPart part, LogLimits limits, Optional<ZoneId> zoneOfOthers) {
    this.logger = logger;
    this.part = part;
    this.limits = limits;
    this.zoneOfOthers = zoneOfOthers;
    this.refusals = new Refusals(logger.file(), part.lines());
  }

  /** A longer look at the dates of the file, where its first part does not tell their order. */
  interface WholeFile {
    Set<DateOrder> orders(Table table, Columns columns, boolean quoted) throws IOException;
  }

  Layout find(WholeFile whole) throws LogRefused, IOException {
    table = Table.in(part.lines(), logger.delimiterMark()).orElseThrow(refusals::noTable);
    ColumnFinder finder = new ColumnFinder(table, refusals);
    columns = finder.find(logger.columns());
    boolean quoted = part.lines().stream().anyMatch(line -> line.indexOf('"') >= 0);
    DateOrder order = order(whole, quoted);
    char mark = decimalMark();
    TemperatureUnit unit = unit(mark);
    Optional<ZoneId> stated = logger.zone().map(ZoneId::of).or(this::zoneOfHeader);
    ZoneId zone = stated.or(() -> zoneOfOthers).orElse(ZoneId.of("UTC"));
    long[] moments = moments(order, zone);
    LogLayout told =
        new LogLayout(
            part.charset().name(),
            table.delimiter(),
            mark,
            table.headerLine(),
            finder.told(),
            order,
            zone,
            stated.isPresent(),
            unit,
            logger.temperatureUnit().isPresent() || unitOfHeader().isPresent(),
            humidityIsFraction(mark));
    return new Layout(
        told, columns, table.firstRow(), middle(moments), newestFirst(moments), quoted);
  }

  private DateOrder order(WholeFile whole, boolean quoted) throws LogRefused, IOException {
    Optional<DateOrder> stated = logger.timePattern().flatMap(DateOrder::of);
    if (stated.isPresent()) {
      return stated.get();
    }
    if (mostlyReads(DateOrder.YEAR_MONTH_DAY)) {
      return DateOrder.YEAR_MONTH_DAY;
    }
    String first = table.readings().get(0).get(columns.time()).strip();
    // Where days, months and years stand between points, the day comes first.
    if (first.matches("\\d{1,2}\\.\\d{1,2}\\..*") && mostlyReads(DateOrder.DAY_MONTH_YEAR)) {
      return DateOrder.DAY_MONTH_YEAR;
    }
    Set<DateOrder> orders = whole.orders(table, columns, quoted);
    if (orders.size() == 1) {
      return orders.iterator().next();
    }
    throw refusals.at(
        table.firstRow(),
        LogCode.DATES_AMBIGUOUS,
        '"' + first + "\", which may be day or month first",
        "a pattern of its date and time in the survey (time_pattern), such as dd/MM/yyyy HH:mm");
  }

  private boolean mostlyReads(DateOrder order) {
    ClockText clock = new ClockText(order);
    long passed =
        times().stream().filter(time -> clock.read(time.toCharArray(), 0, time.length())).count();
    return 2 * passed > table.readings().size();
  }

  private List<String> times() {
    return fields(columns.time());
  }

  private List<String> fields(int column) {
    return column == Columns.NONE
        ? List.of()
        : table.readings().stream().filter(r -> r.size() > column).map(r -> r.get(column)).toList();
  }

  private char decimalMark() {
    return logger.decimalMarkCharacter().orElseGet(this::recognisedMark);
  }

  /** A comma where numbers hold commas and no points. */
  private char recognisedMark() {
    long commas = 0;
    long points = 0;
    for (int column : new int[] {columns.temperature(), columns.humidity(), columns.co2()}) {
      commas += fields(column).stream().filter(f -> f.indexOf(',') >= 0).count();
      points += fields(column).stream().filter(f -> f.indexOf('.') >= 0).count();
    }
    return commas > points ? ',' : '.';
  }

  private TemperatureUnit unit(char mark) throws LogRefused {
    Optional<TemperatureUnit> stated = logger.temperatureUnit().or(this::unitOfHeader);
    if (stated.isPresent()) {
      return stated.get();
    }
    double[] values = numbers(columns.temperature(), mark);
    Arrays.sort(values);
    if (values.length > 0 && values[values.length / 2] > limits.doubtfulCelsius()) {
      throw refusals.at(
          table.headerLine(),
          LogCode.UNIT_AMBIGUOUS,
          "temperatures around " + Math.round(values[values.length / 2]) + " and no unit",
          "the unit in the name of the column or in the survey (temperature_unit: F or C)");
    }
    return TemperatureUnit.CELSIUS;
  }

  private Optional<TemperatureUnit> unitOfHeader() {
    if (columns.temperature() == Columns.NONE) {
      return Optional.empty();
    }
    String name = table.names().get(columns.temperature()).strip();
    if (FAHRENHEIT.matcher(name).find()) {
      return Optional.of(TemperatureUnit.FAHRENHEIT);
    }
    return CELSIUS.matcher(name).find() ? Optional.of(TemperatureUnit.CELSIUS) : Optional.empty();
  }

  /** No room is at 1 % for long: humidities up to 1 are fractions. */
  private boolean humidityIsFraction(char mark) {
    double[] values = numbers(columns.humidity(), mark);
    return values.length > 0
        && table.names().get(columns.humidity()).indexOf('%') < 0
        && Arrays.stream(values).max().getAsDouble() <= 1;
  }

  private double[] numbers(int column, char mark) {
    DecimalText decimal = new DecimalText(mark);
    return fields(column).stream()
        .mapToDouble(f -> decimal.read(f.toCharArray(), 0, f.length()))
        .filter(Double::isFinite)
        .toArray();
  }

  /** Some loggers write their offset into the name of the column of times. */
  private Optional<ZoneId> zoneOfHeader() {
    Matcher offset = OFFSET.matcher(table.names().get(columns.time()));
    try {
      return offset.find() ? Optional.of(ZoneId.of("UTC" + offset.group(1))) : Optional.empty();
    } catch (DateTimeException none) {
      return Optional.empty();
    }
  }

  private long[] moments(DateOrder order, ZoneId zone) {
    ClockText clock = new ClockText(order);
    ZoneClock moments = new ZoneClock(zone, false);
    return times().stream()
        .filter(time -> clock.read(time.toCharArray(), 0, time.length()))
        .mapToLong(
            t -> clock.isAbsolute() ? clock.ms() : moments.moment(clock.ms(), ZoneClock.NONE))
        .toArray();
  }

  /** Rows from before the clock was set are no measure for the others. */
  private long middle(long[] moments) {
    long set = limits.clockSetAfter().toEpochMilli();
    long[] sorted = LongStream.of(moments).filter(ms -> ms >= set).sorted().toArray();
    return sorted.length == 0 ? ZoneClock.NONE : sorted[sorted.length / 2];
  }

  private static boolean newestFirst(long[] moments) {
    int back = 0;
    int forth = 0;
    for (int i = 1; i < moments.length; i++) {
      back += moments[i] < moments[i - 1] ? 1 : 0;
      forth += moments[i] > moments[i - 1] ? 1 : 0;
    }
    // Rows in no order at all are not newest first: nearly every one must be earlier.
    return back > 3 * forth;
  }
}
