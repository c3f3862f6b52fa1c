package org.drysill.survey.log.read;

import de.siegmar.fastcsv.reader.CsvCallbackHandler;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import org.drysill.survey.log.DateOrder;

/** The rows of a file from its first reading on. */
final class CsvRows {
  /** A field is short; one that is longer than this lacks its closing quotation mark. */
  private static final int LONGEST_RECORD = 1 << 16;

  /** Stands for quotation marks where a file has none, and no text holds it. */
  private static final char NO_QUOTE = '\uFFFF';

  private CsvRows() {}

  /** The rows of a file whose layout is known. */
  static <T> CsvReader<T> of(
      FirstPart part, Layout layout, CsvCallbackHandler<T> handler, InputStream bytes) {
    return of(part, layout.told().delimiter(), layout.quoted(), layout.firstRow(), handler, bytes);
  }

  /** The orders in which the dates of a whole file can be read. */
  static Set<DateOrder> orders(
      Path file, FirstPart part, Table table, Columns columns, boolean quoted) throws IOException {
    DateOrderFinder finder = new DateOrderFinder(columns.time());
    try (InputStream bytes = Files.newInputStream(file);
        CsvReader<DateOrder> rows =
            of(part, table.delimiter(), quoted, table.firstRow(), finder, bytes)) {
      return rows.stream().findFirst().<Set<DateOrder>>map(EnumSet::of).orElseGet(finder::found);
    } catch (CsvParseException broken) {
      return finder.found();
    }
  }

  private static <T> CsvReader<T> of(
      FirstPart part,
      char delimiter,
      boolean quoted,
      int firstRow,
      CsvCallbackHandler<T> handler,
      InputStream bytes) {
    CsvReader<T> rows =
        CsvReader.builder()
            .fieldSeparator(delimiter)
            .quoteCharacter(quoted ? '"' : NO_QUOTE)
            .allowExtraFields(true)
            .allowMissingFields(true)
            .allowExtraCharsAfterClosingQuote(true)
            .maxBufferSize(LONGEST_RECORD)
            .build(handler, new InputStreamReader(bytes, part.charset()));
    rows.skipLines(firstRow - 1);
    return rows;
  }
}
