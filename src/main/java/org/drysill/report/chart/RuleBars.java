package org.drysill.report.chart;

import java.util.List;
import java.util.Optional;
import org.drysill.physics.Range;

/**
 * Rule sets side by side: what each asks of this home, the governing one in the colour of data, and
 * across all of them the band of what is provided.
 *
 * @param text the words around the chart
 * @param axis the common axis of all rows
 * @param rows the rule sets from top to bottom
 * @param provided what the home has, drawn as a band
 */
public record RuleBars(ChartText text, Axis axis, List<Row> rows, Optional<Band> provided)
    implements ChartSpec {
  /** Copies the list. */
  public RuleBars {
    rows = List.copyOf(rows);
  }

  /**
   * One rule set.
   *
   * @param label its name, at the left
   * @param value what it asks, in the unit of the axis; empty where it cannot be told
   * @param valueText what it asks in words, or why it cannot be told
   * @param governing true for the one that applies to this home
   */
  public record Row(String label, Optional<Double> value, String valueText, boolean governing) {}

  /**
   * What is provided.
   *
   * @param range the value, in the unit of the axis
   * @param label its words, such as "provided 20 (15–26)"
   */
  public record Band(Range range, String label) {}

  @Override
  public String kind() {
    return "rule-bars";
  }

  @Override
  public double heightMm() {
    return 12 + 4.5 * rows.size();
  }
}
