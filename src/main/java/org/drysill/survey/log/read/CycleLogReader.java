package org.drysill.survey.log.read;

import de.siegmar.fastcsv.reader.CsvParseException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.survey.CycleLogger;
import org.drysill.survey.log.CycleLog;
import org.drysill.survey.log.LogCode;
import org.drysill.survey.log.LogFigures;
import org.drysill.survey.log.LogFile.Account;
import org.drysill.survey.log.LogLimits;
import org.drysill.survey.log.LogQuantity;
import org.drysill.yaml.Problem;

/** Reads logs of cycles reading by reading; their files are written like those of other logs. */
final class CycleLogReader {
  private final Path folder;
  private final LogLimits limits;

  CycleLogReader(Path folder, LogLimits limits) {
    this.folder = folder;
    this.limits = limits;
  }

  CycleLog read(CycleLogger logger, Optional<ZoneId> zoneOfOthers) {
    Path file = folder.resolve(logger.file());
    try (HashedStream bytes = new HashedStream(Files.newInputStream(file))) {
      return read(logger, file, bytes, zoneOfOthers);
    } catch (IOException closed) {
      return unreadable(logger, closed);
    } catch (UncheckedIOException closed) {
      return unreadable(logger, closed.getCause());
    }
  }

  private static CycleLog unreadable(CycleLogger logger, IOException closed) {
    return unusable(logger, "", Refusals.unreadable(logger.file(), closed));
  }

  private CycleLog read(
      CycleLogger logger, Path file, HashedStream bytes, Optional<ZoneId> zoneOfOthers)
      throws IOException {
    try {
      FirstPart part = FirstPart.of(file).orElseThrow(() -> Refusals.noText(logger.file()));
      Map<LogQuantity, Integer> found = columns(logger, part);
      Layout layout = layout(logger, file, part, found, zoneOfOthers);
      return scan(logger, part, layout, found, bytes);
    } catch (LogRefused refused) {
      return unusable(logger, bytes.sha256(), refused.problem());
    }
  }

  private static Map<LogQuantity, Integer> columns(CycleLogger logger, FirstPart part)
      throws LogRefused {
    Refusals refusals = new Refusals(logger.file(), part.lines());
    Optional<Character> delimiter = logger.reduced(Optional.empty()).delimiterMark();
    Table table = Table.in(part.lines(), delimiter).orElseThrow(refusals::noTable);
    return new CycleColumnFinder(table, refusals).find(logger.columns());
  }

  private Layout layout(
      CycleLogger logger,
      Path file,
      FirstPart part,
      Map<LogQuantity, Integer> found,
      Optional<ZoneId> zoneOfOthers)
      throws LogRefused, IOException {
    Optional<Character> delimiter = logger.reduced(Optional.empty()).delimiterMark();
    List<String> names = Table.in(part.lines(), delimiter).orElseThrow().names();
    String grille = names.get(found.get(LogQuantity.SUPPLY_TEMPERATURE)).strip();
    Layout plain =
        new LayoutFinder(logger.reduced(Optional.of(grille)), part, limits, zoneOfOthers)
            .find((table, columns, quoted) -> CsvRows.orders(file, part, table, columns, quoted));
    Map<String, String> told = new LinkedHashMap<>();
    plain.told().columns().entrySet().stream()
        .filter(entry -> !entry.getKey().equals(ColumnKind.TEMPERATURE.label()))
        .forEach(entry -> told.put(entry.getKey(), entry.getValue()));
    found.forEach((quantity, column) -> told.put(quantity.word(), names.get(column).strip()));
    return plain.telling(told);
  }

  private CycleLog scan(
      CycleLogger logger,
      FirstPart part,
      Layout layout,
      Map<LogQuantity, Integer> found,
      HashedStream bytes)
      throws IOException {
    Refusals refusals = new Refusals(logger.file(), part.lines());
    Notes notes = new Notes();
    CycleRows rows = new CycleRows(found.keySet());
    CycleScanner scanner = new CycleScanner(layout, found, limits, notes, rows);
    List<Problem> problems = List.of();
    try {
      CsvRows.of(part, layout, scanner, bytes).forEach(nothing -> {});
    } catch (CsvParseException broken) {
      problems = List.of(refusals.brokenQuotes(scanner.lastLine()));
    }
    scanner.finish(bytes.endsWithinLine());
    String sha256 = bytes.sha256();
    if (rows.size() == 0) {
      return unusable(
          logger,
          sha256,
          refusals
              .at(
                  layout.firstRow(),
                  LogCode.NO_USABLE_ROW,
                  scanner.rowsRead() + " rows of which none can be used",
                  "rows with a time and a temperature")
              .problem());
    }
    rows.settle(limits, notes);
    Account account =
        new Account(figures(rows, scanner.rowsRead()), layout.told(), notes.quality());
    return new CycleLog(
        logger, sha256, Optional.of(rows.samples()), Optional.of(account), problems);
  }

  private static LogFigures figures(CycleRows rows, long rowsRead) {
    double spanS = (rows.lastMs() - rows.firstMs()) / 1000.0;
    return new LogFigures(
        rowsRead,
        rows.size(),
        Instant.ofEpochMilli(rows.firstMs()),
        Instant.ofEpochMilli(rows.lastMs()),
        rows.medianStepS(),
        spanS - rows.gapS(),
        rows.gapS());
  }

  private static CycleLog unusable(CycleLogger logger, String sha256, Problem problem) {
    return new CycleLog(logger, sha256, Optional.empty(), Optional.empty(), List.of(problem));
  }
}
