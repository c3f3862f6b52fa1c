package org.drysill.report.chart;

import java.util.List;
import org.drysill.physics.Range;

/**
 * A sum and its parts, such as moisture by source: one horizontal bar per part to the likely value
 * with a thin line for its range.
 *
 * @param text the words around the chart
 * @param axis the common axis of all rows
 * @param rows the parts from top to bottom, the greatest first by custom
 */
public record SourceBars(ChartText text, Axis axis, List<Row> rows) implements ChartSpec {
  /** Copies the list. */
  public SourceBars {
    rows = List.copyOf(rows);
  }

  /**
   * One part, or the sum of all.
   *
   * @param label its name, at the left
   * @param value the value, in the unit of the axis
   * @param valueText the value in words
   * @param sum true for the sum, which is set apart
   */
  public record Row(String label, Range value, String valueText, boolean sum) {}

  @Override
  public String kind() {
    return "source-bars";
  }

  @Override
  public double heightMm() {
    return 8 + 6.6 * rows.size();
  }
}
