package org.drysill.report.chart;

import java.util.List;

/**
 * Lines through the layers of a wall, in panels one above the other, the layers drawn behind them
 * and named underneath.
 *
 * @param text the words around the chart
 * @param layers room side first
 * @param panels from top to bottom
 */
public record WallLines(ChartText text, List<Layer> layers, List<Panel> panels)
    implements ChartSpec {
  /** Copies the lists. */
  public WallLines {
    layers = List.copyOf(layers);
    panels = List.copyOf(panels);
  }

  /** How a layer is filled; each can be told from the others in black and white. */
  public enum Pattern {
    /** Dense diagonals: masonry. */
    DIAGONAL,
    /** Wide crossed diagonals: insulation. */
    CROSSED,
    /** A plain grey ground: boards, plasters, timber. */
    GROUND,
    /** Nothing: air. */
    EMPTY,
    /** Solid and thin: a sheet or a coat. */
    SOLID
  }

  /**
   * A layer.
   *
   * @param label its words under the axis
   * @param thickness in any unit that all layers share; 0 for a sheet
   */
  public record Layer(String label, double thickness, Pattern pattern) {}

  /**
   * Lines on one upright axis.
   *
   * @param title what it counts, with its unit
   */
  public record Panel(String title, Axis axis, List<Line> lines, List<Mark> marks) {
    /** Copies the lists. */
    public Panel {
      lines = List.copyOf(lines);
      marks = List.copyOf(marks);
    }
  }

  /**
   * A line from the room to the outside.
   *
   * @param label its words, at its end
   * @param room the value in the room; a line that ends at the surfaces has the value there
   * @param points from surface to surface
   * @param outside the value outdoors
   */
  public record Line(
      String label, double room, List<Point> points, double outside, MonthLines.Style style) {
    /** Copies the list. */
    public Line {
      points = List.copyOf(points);
    }
  }

  /**
   * A point of a line.
   *
   * @param layer the layer that it lies in, 0 for the first; the number of layers for the outer
   *     surface
   * @param share share of the layer's thickness before it
   */
  public record Point(int layer, double share, double value) {}

  /** A labelled dot. */
  public record Mark(String label, Point at) {}

  @Override
  public String kind() {
    return "wall-lines";
  }

  @Override
  public double heightMm() {
    return 24 * panels.size() + 6 + 3.4 * Math.min(4, layers.size());
  }
}
