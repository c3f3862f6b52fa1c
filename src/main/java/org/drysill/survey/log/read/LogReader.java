package org.drysill.survey.log.read;

import de.siegmar.fastcsv.reader.CsvParseException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.survey.CycleLogger;
import org.drysill.survey.Logger;
import org.drysill.survey.Room;
import org.drysill.survey.Survey;
import org.drysill.survey.log.CycleLog;
import org.drysill.survey.log.Log;
import org.drysill.survey.log.LogCode;
import org.drysill.survey.log.LogContent;
import org.drysill.survey.log.LogLimits;
import org.drysill.survey.log.Logs;
import org.drysill.yaml.Problem;

/** The one way in for logs: a file passes once, in memory that does not grow with its rows. */
public final class LogReader {
  private final Path folder;
  private final LogLimits limits;

  /**
   * A reader of the logs of one visit.
   *
   * @param folder the folder that their paths start from
   * @param limits what is believed
   */
  public LogReader(Path folder, LogLimits limits) {
    this.folder = folder;
    this.limits = limits;
  }

  /** Reads every log that a survey names. */
  public Logs read(Survey survey) {
    Optional<ZoneId> zone =
        Stream.concat(
                survey.outdoorLogger().stream(),
                survey.rooms().stream().map(Room::logger).flatMap(Optional::stream))
            .flatMap(logger -> logger.zone().stream())
            .map(ZoneId::of)
            .findFirst();
    LocalDate visit = survey.visit().date();
    Map<String, Log> rooms = new LinkedHashMap<>();
    for (Room room : survey.rooms()) {
      room.logger().ifPresent(logger -> rooms.put(room.id(), dated(logger, zone, visit)));
    }
    Map<CycleLogger, CycleLog> cycles = new LinkedHashMap<>();
    CycleLogReader reader = new CycleLogReader(folder, limits);
    cycleLoggers(survey)
        .forEach(logger -> cycles.computeIfAbsent(logger, l -> dated(reader.read(l, zone), visit)));
    return new Logs(
        rooms, survey.outdoorLogger().map(logger -> dated(logger, zone, visit)), cycles);
  }

  private Log dated(Logger logger, Optional<ZoneId> zone, LocalDate visit) {
    Log log = read(logger, zone);
    return FarFromVisit.of(log, visit).map(log::with).orElse(log);
  }

  private static CycleLog dated(CycleLog log, LocalDate visit) {
    return FarFromVisit.of(log, visit).map(log::with).orElse(log);
  }

  /** True where a survey names a log. */
  public static boolean isNeeded(Survey survey) {
    return survey.outdoorLogger().isPresent()
        || survey.rooms().stream().anyMatch(room -> room.logger().isPresent())
        || cycleLoggers(survey).findAny().isPresent();
  }

  private static Stream<CycleLogger> cycleLoggers(Survey survey) {
    return survey.rooms().stream()
        .flatMap(room -> room.fans().stream())
        .flatMap(fan -> fan.heatRecoveryTests().stream())
        .flatMap(test -> test.log().stream());
  }

  /**
   * Reads one log.
   *
   * @param logger what the survey says of it
   * @param zoneOfOthers the zone of other logs of the visit, for one that states none; UTC where
   *     none does
   */
  public Log read(Logger logger, Optional<ZoneId> zoneOfOthers) {
    Path file = folder.resolve(logger.file());
    try (HashedStream bytes = new HashedStream(Files.newInputStream(file))) {
      return read(logger, file, bytes, zoneOfOthers);
    } catch (IOException closed) {
      return unreadable(logger, closed);
    } catch (UncheckedIOException closed) {
      return unreadable(logger, closed.getCause());
    }
  }

  private static Log unreadable(Logger logger, IOException closed) {
    Problem problem = Refusals.unreadable(logger.file(), closed);
    return new Log(logger, "", Optional.empty(), List.of(problem));
  }

  private Log read(Logger logger, Path file, HashedStream bytes, Optional<ZoneId> zoneOfOthers)
      throws IOException {
    try {
      FirstPart part = FirstPart.of(file).orElseThrow(() -> Refusals.noText(logger.file()));
      Layout layout =
          new LayoutFinder(logger, part, limits, zoneOfOthers)
              .find((table, columns, quoted) -> CsvRows.orders(file, part, table, columns, quoted));
      return new Scan(logger, part, layout).read(bytes);
    } catch (LogRefused refused) {
      return new Log(logger, bytes.sha256(), Optional.empty(), List.of(refused.problem()));
    }
  }

  /** One pass over a file whose layout is known. */
  private final class Scan {
    private final Logger logger;
    private final FirstPart part;
    private final Layout layout;
    private final Notes notes = new Notes();
    private final HeldReadings readings = new HeldReadings(limits, notes);
    private final SortWindow window = new SortWindow(readings);
    private final RowScanner scanner;

    Scan(Logger logger, FirstPart part, Layout layout) {
      this.logger = logger;
      this.part = part;
      this.layout = layout;
      this.scanner = new RowScanner(layout, limits, notes, window);
    }

    Log read(HashedStream bytes) throws IOException {
      List<Problem> problems = List.of();
      try {
        CsvRows.of(part, layout, scanner, bytes).forEach(nothing -> {});
      } catch (CsvParseException broken) {
        problems =
            List.of(new Refusals(logger.file(), part.lines()).brokenQuotes(scanner.lastLine()));
      }
      scanner.finish(bytes.endsWithinLine());
      window.finish();
      readings.finish();
      String sha256 = bytes.sha256();
      if (readings.isEmpty()) {
        return new Log(logger, sha256, Optional.empty(), List.of(unusable()));
      }
      LogContent content =
          new LogContent(
              readings.series(),
              readings.figures(scanner.rowsRead()),
              layout.told(),
              notes.quality());
      return new Log(logger, sha256, Optional.of(content), problems);
    }

    private Problem unusable() {
      return new Refusals(logger.file(), part.lines())
          .at(
              layout.firstRow(),
              LogCode.NO_USABLE_ROW,
              scanner.rowsRead() + " rows of which none can be used",
              "rows with a time and a temperature, humidity or CO2")
          .problem();
    }
  }
}
