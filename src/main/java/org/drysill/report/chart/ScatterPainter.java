package org.drysill.report.chart;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.List;
import org.drysill.report.font.Face;

/** Draws {@link Scatter}: the first cloud filled, the second open, the third as crosses. */
final class ScatterPainter {
  private static final double HEAD = 19;
  private static final double FOOT = 28;
  private static final double TO_LABEL = 6;
  private static final double RADIUS = 2.2;
  private static final int SORTS = 3;

  private final Scatter chart;
  private final Setter setter;

  ScatterPainter(Scatter chart, Setter setter) {
    this.chart = chart;
    this.setter = setter;
  }

  void paint(double width, double height) {
    double left = widest(chart.upright().ticks().stream().map(Tick::label).toList()) + 6;
    double right = widest(chart.lines().stream().map(Scatter.Line::label).toList()) + TO_LABEL;
    Plot plot =
        new Plot(
            chart.horizontal(),
            chart.upright(),
            left,
            HEAD,
            width - left - right - 1,
            height - HEAD - FOOT);
    frame(plot);
    lines(plot);
    for (int i = 0; i < chart.clouds().size(); i++) {
      for (Scatter.Point point : chart.clouds().get(i).points()) {
        mark(i % SORTS, plot.x(point.x()), plot.y(point.y()));
      }
    }
    names(plot);
  }

  private void frame(Plot plot) {
    for (Tick tick : chart.upright().ticks()) {
      double y = plot.y(tick.at());
      setter.line(plot.left(), y, plot.right(), y, Ink.GRID, 0.5);
      setter.right(tick.label(), plot.left() - 6, y + Setter.HALF_CAP, Face.REGULAR, Ink.QUIET);
    }
    for (Tick tick : chart.horizontal().ticks()) {
      double x = plot.x(tick.at());
      setter.line(x, plot.bottom(), x, plot.bottom() + 3, Ink.LINE, 0.6);
      setter.centre(tick.label(), x, plot.bottom() + 13.5, Face.REGULAR, Ink.QUIET);
    }
    double middle = (plot.left() + plot.right()) / 2;
    setter.centre(chart.under(), middle, plot.bottom() + 25.5, Face.REGULAR, Ink.QUIET);
  }

  private void lines(Plot plot) {
    double[] wanted =
        chart.lines().stream().mapToDouble(l -> plot.y(last(l.points()).y())).toArray();
    double[] places = Spread.apart(wanted, Setter.LINE_HEIGHT, plot.top(), plot.bottom());
    for (int i = 0; i < wanted.length; i++) {
      Scatter.Line line = chart.lines().get(i);
      Path2D path = new Path2D.Double();
      path.moveTo(plot.x(line.points().get(0).x()), plot.y(line.points().get(0).y()));
      line.points().stream().skip(1).forEach(p -> path.lineTo(plot.x(p.x()), plot.y(p.y())));
      setter.outline(path, Ink.LINE, 1);
      double x = plot.right() + TO_LABEL;
      setter.left(line.label(), x, places[i] + Setter.HALF_CAP, Face.REGULAR, Ink.TEXT);
    }
  }

  /** What each sort of point is of, above the plot. */
  private void names(Plot plot) {
    double x = plot.left();
    for (int i = 0; i < chart.clouds().size(); i++) {
      String label = chart.clouds().get(i).label();
      mark(i % SORTS, x + RADIUS, HEAD - 11);
      setter.left(label, x + 9, HEAD - 11 + Setter.HALF_CAP, Face.REGULAR, Ink.INK);
      x += setter.width(label, Face.REGULAR) + 24;
    }
  }

  private void mark(int sort, double x, double y) {
    Ellipse2D circle = new Ellipse2D.Double(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS);
    if (sort == 0) {
      setter.fill(circle, Ink.INK);
    } else if (sort == 1) {
      setter.fill(circle, Ink.PAPER);
      setter.outline(circle, Ink.INK, 0.9);
    } else {
      setter.line(x - RADIUS, y - RADIUS, x + RADIUS, y + RADIUS, Ink.INK, 0.9);
      setter.line(x - RADIUS, y + RADIUS, x + RADIUS, y - RADIUS, Ink.INK, 0.9);
    }
  }

  private static Scatter.Point last(List<Scatter.Point> points) {
    return points.get(points.size() - 1);
  }

  private double widest(List<String> labels) {
    return labels.stream().mapToDouble(l -> setter.width(l, Face.REGULAR)).max().orElse(0);
  }
}
