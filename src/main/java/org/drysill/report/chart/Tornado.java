package org.drysill.report.chart;

import java.util.List;
import java.util.Optional;

/**
 * What each input does to a result: a bar from the result at the low end of the input to that at
 * its high end, about the middle of the result, the widest first.
 *
 * @param text the words around the chart
 * @param axis the result
 * @param middle the result in the middle of all samples, in the unit of the axis
 * @param target what the result has to reach, in the unit of the axis
 * @param targetText the same in words
 * @param rows the inputs from top to bottom
 */
public record Tornado(
    ChartText text,
    Axis axis,
    double middle,
    Optional<Double> target,
    String targetText,
    List<Row> rows)
    implements ChartSpec {
  /** Copies the list. */
  public Tornado {
    rows = List.copyOf(rows);
  }

  /**
   * One input.
   *
   * @param label its name
   * @param atLow the result where the input is low, in the unit of the axis
   * @param atHigh the result where it is high
   * @param share its share of the spread in words
   */
  public record Row(String label, double atLow, double atHigh, String share) {}

  @Override
  public String kind() {
    return "tornado";
  }

  @Override
  public double heightMm() {
    return 14 + 6.6 * rows.size();
  }
}
