package org.drysill.report.chart;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Verdict;
import org.drysill.physics.Range;

/**
 * Provided against required: one horizontal bar per row to the likely value, a thin line from low
 * to high, an upright tick at what is asked.
 *
 * @param text the words around the chart
 * @param axis the common axis of all rows
 * @param rows the rows from top to bottom
 */
public record RangeBars(ChartText text, Axis axis, List<Row> rows) implements ChartSpec {
  /** Copies the list. */
  public RangeBars {
    rows = List.copyOf(rows);
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
