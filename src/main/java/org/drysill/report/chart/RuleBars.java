package org.drysill.report.chart;

import java.util.List;
import java.util.Optional;
import org.drysill.physics.Range;

/**
 * Rule sets side by side: what each asks of this home as dots on one axis, the figures that people
 * are told under them, and across all of them the band of what is provided.
 *
 * @param text the words around the chart
 * @param axis the common axis of all rows
 * @param second the same axis in another unit, above the rows
 * @param rows the rule sets from top to bottom, then the figures that people are told
 * @param provided what the home has, drawn as a band
 */
public record RuleBars(
    ChartText text, Axis axis, Optional<Second> second, List<Row> rows, Optional<Band> provided)
    implements ChartSpec {
  /** Copies the list. */
  public RuleBars {
    rows = List.copyOf(rows);
  }

  /**
   * One rule set, or one figure that people are told.
   *
   * @param label its name, at the left
   * @param values what it asks, one for each variant, in the unit of the axis; none where it cannot
   *     be told
   * @param valueText what it asks in words, or why it cannot be told
   * @param governing true for the one that applies to this home
   * @param quoted true for a figure that people are told
   */
  public record Row(
      String label, List<Double> values, String valueText, boolean governing, boolean quoted) {
    /** Copies the list. */
    public Row {
      values = List.copyOf(values);
    }
  }

  /**
   * The axis in another unit.
   *
   * @param firstUnit the unit of the axis below
   * @param unit the unit of this one
   * @param ticks its labels at places of the axis below
   */
  public record Second(String firstUnit, String unit, List<Tick> ticks) {
    /** Copies the list. */
    public Second {
      ticks = List.copyOf(ticks);
    }
  }

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
    return 13 + 3.45 * rows.size();
  }
}
