package org.drysill.report.chart;

import java.util.List;

/**
 * Points of two quantities, and lines that they are held against.
 *
 * @param text the words around the chart
 * @param horizontal the horizontal axis
 * @param upright the upright axis
 * @param clouds the points, by what they are of
 * @param lines labelled at their left ends
 * @param under what the horizontal axis counts
 */
public record Scatter(
    ChartText text,
    Axis horizontal,
    Axis upright,
    List<Cloud> clouds,
    List<Line> lines,
    String under)
    implements ChartSpec {
  /** Copies the lists. */
  public Scatter {
    clouds = List.copyOf(clouds);
    lines = List.copyOf(lines);
  }

  /**
   * Points of one thing.
   *
   * @param label its name
   * @param points its points
   */
  public record Cloud(String label, List<Point> points) {
    /** Copies the list. */
    public Cloud {
      points = List.copyOf(points);
    }
  }

  /** One point in the units of the axes. */
  public record Point(double x, double y) {}

  /**
   * A line through points from left to right.
   *
   * @param label its words, at its right end
   * @param points at least two
   */
  public record Line(String label, List<Point> points) {
    /** Copies the list. */
    public Line {
      points = List.copyOf(points);
    }
  }

  @Override
  public String kind() {
    return "scatter";
  }

  @Override
  public double heightMm() {
    return 52;
  }
}
