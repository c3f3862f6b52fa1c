package org.drysill.report.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds free places for labels around points: first close by, then further and further away, never
 * upon another label or point, and upon lines only where nothing else is free.
 */
final class LabelPlaces {
  private static final double[] RINGS = {0, 8, 16, 26, 38, 52, 68, 90};
  private static final double CLOSE = 4;
  private static final double APART = 6;

  /** The ways from a point: right, left, above, below, and the four between. */
  private static final int[][] WAYS = {
    {1, 0}, {1, -1}, {1, 1}, {-1, 0}, {-1, -1}, {-1, 1}, {0, -1}, {0, 1}
  };

  private final Rectangle2D bounds;
  private final List<Rectangle2D> taken = new ArrayList<>();
  private final List<Line2D> lines = new ArrayList<>();

  LabelPlaces(Rectangle2D bounds) {
    this.bounds = bounds;
  }

  /**
   * Where a label stands.
   *
   * @param far true where a line should lead from the point to it
   * @param clear true where no line of data runs under it
   */
  record Place(Rectangle2D box, boolean far, boolean clear) {
    double nearX(double x) {
      return Math.max(box.getMinX() - 2, Math.min(x, box.getMaxX() + 2));
    }

    double nearY(double y) {
      return Math.max(box.getMinY(), Math.min(y, box.getMaxY()));
    }
  }

  void takeDot(double x, double y, double radius) {
    taken.add(new Rectangle2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
  }

  void takeLine(double x1, double y1, double x2, double y2) {
    lines.add(new Line2D.Double(x1, y1, x2, y2));
  }

  /** Finds a place for a label of the given size and takes it. */
  Place find(double x, double y, double radius, double width, double height) {
    for (boolean overLines : new boolean[] {false, true}) {
      for (double ring : RINGS) {
        for (int[] way : WAYS) {
          Rectangle2D box = box(x, y, radius + CLOSE + ring, way, width, height);
          if (isFree(box, overLines)) {
            taken.add(apart(box));
            return new Place(box, ring > 8, !overLines);
          }
        }
      }
    }
    Rectangle2D box = box(x, y, radius + CLOSE, WAYS[0], width, height);
    return new Place(box, false, false);
  }

  /** Labels beside each other would be read as one. */
  private static Rectangle2D apart(Rectangle2D box) {
    return new Rectangle2D.Double(
        box.getX() - APART, box.getY(), box.getWidth() + 2 * APART, box.getHeight());
  }

  private static Rectangle2D box(
      double x, double y, double away, int[] way, double width, double height) {
    double left = way[0] > 0 ? x + away : way[0] < 0 ? x - away - width : x - width / 2;
    double diagonal = way[0] == 0 ? away : Math.max(height / 2, away - CLOSE);
    double middle = y + way[1] * (diagonal + (way[0] == 0 ? height / 2 - 2 : 0));
    return new Rectangle2D.Double(left, middle - height / 2, width, height);
  }

  private boolean isFree(Rectangle2D box, boolean overLines) {
    return bounds.contains(box)
        && taken.stream().noneMatch(box::intersects)
        && (overLines || lines.stream().noneMatch(line -> line.intersects(box)));
  }
}
