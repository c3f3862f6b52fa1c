package org.drysill.reference;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A row of {@code reference/ventilation_examples.csv}: what goes in, what should come out, how
 * near, and on which document it rests, with {@code (memory)} where that was remembered.
 */
public record WorkedExample(
    String id,
    String name,
    Map<String, String> inputs,
    Map<String, String> expected,
    String label,
    String tolerance) {

  /** All rows in their order. */
  public static List<WorkedExample> all() {
    try (InputStream in =
            WorkedExample.class.getResourceAsStream("/reference/ventilation_examples.csv");
        CsvReader<NamedCsvRecord> csv =
            CsvReader.builder()
                .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      List<WorkedExample> rows = new ArrayList<>();
      csv.forEach(row -> rows.add(of(row)));
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static WorkedExample of(NamedCsvRecord row) {
    return new WorkedExample(
        row.getField("id"),
        row.getField("case"),
        pairs(row.getField("inputs")),
        pairs(row.getField("expected")),
        row.getField("label"),
        row.getField("tolerance"));
  }

  /**
   * Pairs in their order. {@code kitchen: high: 13; continuous: 6.5} is {@code kitchen.high} and
   * {@code kitchen.continuous}: a key of two words names the group of what follows.
   */
  static Map<String, String> pairs(String text) {
    Map<String, String> pairs = new LinkedHashMap<>();
    String group = "";
    for (String pair : text.split(";", -1)) {
      String[] parts = pair.split(":", 3);
      if (parts.length == 3) {
        group = parts[0].trim() + ".";
      }
      if (parts.length > 1) {
        String key = group + parts[parts.length - 2].trim();
        pairs.put(key, parts[parts.length - 1].trim());
      }
    }
    return pairs;
  }

  /** An input that is a number. */
  public double in(String key) {
    return Double.parseDouble(inputs.get(key));
  }

  /**
   * How far a result may be from a printed number: the row's own tolerance, or half of the last
   * digit that is printed where that is more; rounding of a double where the row is exact.
   */
  public double allowance(String printed) {
    if (tolerance.equals("exact")) {
      return 1e-9 * Math.max(1, Math.abs(Double.parseDouble(printed)));
    }
    double given = Double.parseDouble(tolerance.split(" ", 2)[0]);
    return Math.max(given, Math.pow(10, -new BigDecimal(printed).scale()) / 2) + 1e-9;
  }

  @Override
  public String toString() {
    return id + " " + name + " " + inputs + " = " + expected + " (" + label + ")";
  }
}
