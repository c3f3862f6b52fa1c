package org.drysill.report.chart;

import java.awt.geom.Path2D;

/** Draws arrows of flows: as thick as the flow is great, each kind in a pattern of its own. */
final class Arrow {
  private static final double THICKEST = 8;
  private static final double THINNEST = 1.2;
  private static final double HEAD = 6;
  private static final double DASH = 4;
  private static final double SPACE = 2.6;

  private final Setter setter;
  private final double greatest;

  /**
   * Arrows of one chart.
   *
   * @param greatest the greatest flow of it
   */
  Arrow(Setter setter, double greatest) {
    this.setter = setter;
    this.greatest = greatest;
  }

  /** Draws an arrow along the page's width, its point at the second place. */
  void across(AirSketch.Flow flow, double from, double to, double y) {
    draw(flow, from, to, (along, aside) -> new double[] {along, y + aside});
  }

  /** Draws an upright arrow, its point at the second place. */
  void upright(AirSketch.Flow flow, double x, double from, double to) {
    draw(flow, from, to, (along, aside) -> new double[] {x + aside, along});
  }

  private double thickness(AirSketch.Flow flow) {
    return Math.max(THINNEST, THICKEST * flow.size() / greatest);
  }

  /** Turns a place along and beside an arrow into one on the canvas. */
  private interface Turn {
    double[] at(double along, double aside);
  }

  private void draw(AirSketch.Flow flow, double from, double to, Turn turn) {
    double half = thickness(flow) / 2;
    double way = Math.signum(to - from);
    double neck = to - way * HEAD;
    Path2D head = path(turn, new double[][] {{neck, -half - 2.4}, {to, 0}, {neck, half + 2.4}});
    switch (flow.kind()) {
      case SUPPLY -> {
        setter.fill(path(turn, shaft(from, neck, half)), Ink.INK);
        setter.fill(head, Ink.INK);
      }
      case TRANSFER -> {
        setter.fill(path(turn, shaft(from, neck, half)), Ink.DATA);
        setter.fill(head, Ink.DATA);
      }
      case EXTRACT -> hollow(path(turn, outline(from, neck, to, Math.max(half, 1))));
      case LEAKS -> {
        for (double at = 0; at < Math.abs(neck - from); at += DASH + SPACE) {
          double end = Math.min(at + DASH, Math.abs(neck - from));
          setter.fill(path(turn, shaft(from + way * at, from + way * end, half)), Ink.QUIET);
        }
        setter.fill(head, Ink.QUIET);
      }
    }
  }

  private void hollow(Path2D outline) {
    setter.fill(outline, Ink.PAPER);
    setter.outline(outline, Ink.INK, 0.8);
  }

  private static double[][] shaft(double from, double to, double half) {
    return new double[][] {{from, -half}, {to, -half}, {to, half}, {from, half}};
  }

  private static double[][] outline(double from, double neck, double to, double half) {
    double wing = half + 2.4;
    return new double[][] {
      {from, -half}, {neck, -half}, {neck, -wing}, {to, 0}, {neck, wing}, {neck, half}, {from, half}
    };
  }

  private static Path2D path(Turn turn, double[][] corners) {
    Path2D path = new Path2D.Double();
    for (double[] corner : corners) {
      double[] at = turn.at(corner[0], corner[1]);
      if (path.getCurrentPoint() == null) {
        path.moveTo(at[0], at[1]);
      } else {
        path.lineTo(at[0], at[1]);
      }
    }
    path.closePath();
    return path;
  }
}
