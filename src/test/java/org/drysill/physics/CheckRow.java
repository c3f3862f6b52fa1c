package org.drysill.physics;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A row of {@code reference/physics_checks.csv}: what someone else says a quantity is. */
public record CheckRow(
    String id,
    String quantity,
    Map<String, String> inputs,
    double expected,
    String tolerance,
    String unit,
    String source,
    String how) {

  /** Every row, in the order of the file. */
  public static List<CheckRow> all() {
    return read("/reference/physics_checks.csv").stream().map(CheckRow::of).toList();
  }

  /** An input that is a number. */
  public double in(String name) {
    return Double.parseDouble(text(name));
  }

  /** An input that is a number, or a value where the row does not name it. */
  public double in(String name, double otherwise) {
    return inputs.containsKey(name) ? in(name) : otherwise;
  }

  /** An input as it is written. */
  public String text(String name) {
    String value = inputs.get(name);
    if (value == null) {
      throw new AssertionError(id + " has no input " + name + " but " + inputs);
    }
    return value;
  }

  /**
   * What a result may differ, in the unit of the row, for a tolerance such as {@code 0.1%} or
   * {@code 0.05}; a zero leaves room for rounding only.
   */
  public double allowance(String tolerance) {
    double given =
        tolerance.endsWith("%")
            ? Math.abs(expected)
                * Double.parseDouble(tolerance.substring(0, tolerance.length() - 1))
                / 100
            : Double.parseDouble(tolerance);
    return given + 1e-9 * Math.abs(expected);
  }

  @Override
  public String toString() {
    return id + " " + quantity + inputs + " = " + expected + " " + unit + " (" + how + ") "
        + source;
  }

  static List<NamedCsvRecord> read(String resource) {
    try (InputStream in = CheckRow.class.getResourceAsStream(resource);
        CsvReader<NamedCsvRecord> csv =
            CsvReader.builder()
                .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      List<NamedCsvRecord> rows = new ArrayList<>();
      csv.forEach(rows::add);
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Pairs such as {@code T_C=20;RH_pct=50}, in their order. */
  static Map<String, String> pairs(String text, String between, String within) {
    Map<String, String> pairs = new LinkedHashMap<>();
    for (String pair : text.split(between, -1)) {
      String[] halves = pair.split(within, 2);
      if (halves.length == 2) {
        pairs.put(halves[0].trim(), halves[1].trim());
      }
    }
    return pairs;
  }

  private static CheckRow of(NamedCsvRecord row) {
    return new CheckRow(
        row.getField("id"),
        row.getField("quantity"),
        pairs(row.getField("inputs"), ";", "="),
        Double.parseDouble(row.getField("expected")),
        row.getField("tolerance"),
        row.getField("unit"),
        row.getField("source"),
        row.getField("how"));
  }
}
