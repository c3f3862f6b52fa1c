package org.drysill.report.chart;

import java.util.List;

/**
 * The temperature at the grille of an alternating unit through its cycle: the two halves side by
 * side, told apart by a hatched ground, the temperatures of the room and outdoors as lines, and the
 * mean of the air supplied.
 *
 * @param text the words around the chart
 * @param time the horizontal axis
 * @param temperature the upright axis
 * @param halves the two halves from left to right; the first is hatched
 * @param curve the temperature from left to right
 * @param levels lines across the chart, labelled at their right end
 * @param mean the mean of the first half
 */
public record CycleCurve(
    ChartText text,
    Axis time,
    Axis temperature,
    List<Half> halves,
    List<At> curve,
    List<Level> levels,
    Level mean)
    implements ChartSpec {
  /** Copies the lists. */
  public CycleCurve {
    halves = List.copyOf(halves);
    curve = List.copyOf(curve);
    levels = List.copyOf(levels);
  }

  /**
   * A half of the cycle.
   *
   * @param from start, on the axis of time
   * @param to end
   * @param label its words, above it
   */
  public record Half(double from, double to, String label) {}

  /**
   * A point of the curve.
   *
   * @param time on the axis of time
   * @param temperature on the upright axis
   */
  public record At(double time, double temperature) {}

  /**
   * A temperature.
   *
   * @param at its value
   * @param label its words
   */
  public record Level(double at, String label) {}

  @Override
  public String kind() {
    return "cycle-curve";
  }

  @Override
  public double heightMm() {
    return 42;
  }
}
