package org.drysill.report.chart;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.drysill.assess.Verdict;
import org.drysill.physics.Range;

/**
 * Provided against required: one horizontal bar per row to the likely value, a thin line from low
 * to high, an upright tick at what is asked.
 *
 * @param text the words around the chart
 * @param axis the common axis of all rows
 * @param rows the rows from top to bottom
 * @param words the word beside the mark of each verdict
 */
public record RangeBars(ChartText text, Axis axis, List<Row> rows, Map<Verdict, String> words)
    implements ChartSpec {
  /** Copies the collections. */
  public RangeBars {
    rows = List.copyOf(rows);
    // In the order of verdicts: that of copied maps differs from process to process.
    words = Collections.unmodifiableMap(new TreeMap<>(words));
  }

  /** The same with the words of the report for verdicts. */
  public RangeBars(ChartText text, Axis axis, List<Row> rows) {
    this(
        text,
        axis,
        rows,
        Arrays.stream(Verdict.values()).collect(Collectors.toMap(v -> v, Setter::word)));
  }

  /**
   * One bar.
   *
   * @param label what is provided, at the left
   * @param provided the value, in the unit of the axis
   * @param valueText the value in words, such as "20 (15–26)"
   * @param required the value that is asked, in the unit of the axis
   * @param requiredText what is asked in words, such as "31 asked"; empty where nothing is
   * @param verdict what the comparison shows
   */
  public record Row(
      String label,
      Range provided,
      String valueText,
      Optional<Double> required,
      String requiredText,
      Optional<Verdict> verdict) {}

  @Override
  public String kind() {
    return "range-bars";
  }

  @Override
  public double heightMm() {
    return 8 + 8.5 * rows.size();
  }
}
