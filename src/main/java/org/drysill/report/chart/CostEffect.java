package org.drysill.report.chart;

import java.util.List;
import org.drysill.physics.Range;

/**
 * Measures by cost and effect: a numbered point at the likely values and thin lines for the ranges
 * of both.
 *
 * @param text the words around the chart
 * @param cost the horizontal axis
 * @param costTitle what the horizontal axis counts, with its unit
 * @param effect the upright axis
 * @param effectTitle what the upright axis counts, with its unit
 * @param points the measures
 */
public record CostEffect(
    ChartText text,
    Axis cost,
    String costTitle,
    Axis effect,
    String effectTitle,
    List<Point> points)
    implements ChartSpec {
  /** Copies the list. */
  public CostEffect {
    points = List.copyOf(points);
  }

  /**
   * One measure.
   *
   * @param number its number in the list of measures
   * @param label its short name
   * @param cost in the unit of the horizontal axis
   * @param effect in the unit of the upright axis
   * @param chosen true where it is recommended
   */
  public record Point(String number, String label, Range cost, Range effect, boolean chosen) {}

  @Override
  public String kind() {
    return "cost-effect";
  }

  @Override
  public double heightMm() {
    return 68;
  }
}
