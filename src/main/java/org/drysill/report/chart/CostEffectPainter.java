package org.drysill.report.chart;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.drysill.report.font.Face;

/** Draws {@link CostEffect}. */
final class CostEffectPainter {
  private static final double HEAD = 20;
  private static final double FOOT = 32;
  private static final double RADIUS = 3.6;

  private final CostEffect chart;
  private final Setter setter;

  CostEffectPainter(CostEffect chart, Setter setter) {
    this.chart = chart;
    this.setter = setter;
  }

  void paint(double width, double height) {
    double numbers =
        6
            + chart.effect().ticks().stream()
                .mapToDouble(tick -> setter.width(tick.label(), Face.REGULAR))
                .max()
                .orElse(0);
    // A long number under the start of the other axis reaches further left.
    double ticks = Math.max(numbers, firstTickHalf());
    double plotHeight = height - HEAD - FOOT;
    double last = chart.cost().ticks().isEmpty() ? 0 : lastTickHalf();
    Plot plot =
        new Plot(chart.cost(), chart.effect(), ticks, HEAD, width - ticks - last - 2, plotHeight);
    frame(plot);
    for (CostEffect.Point point : chart.points()) {
      ranges(plot, point);
    }
    plot.paint(setter.canvas().graphics());
    for (CostEffect.Point point : chart.points()) {
      setter.dot(x(plot, point), y(plot, point), RADIUS, point.chosen());
    }
    labels(plot, width);
  }

  private double firstTickHalf() {
    return chart.cost().ticks().stream()
        .limit(1)
        .mapToDouble(tick -> setter.width(tick.label(), Face.REGULAR) / 2)
        .sum();
  }

  private double lastTickHalf() {
    List<Tick> ticks = chart.cost().ticks();
    return setter.width(ticks.get(ticks.size() - 1).label(), Face.REGULAR) / 2;
  }

  private void frame(Plot plot) {
    for (Tick tick : chart.effect().ticks()) {
      double y = plot.y(tick.at());
      setter.line(plot.left(), y, plot.right(), y, Ink.GRID, 0.5);
      setter.right(tick.label(), plot.left() - 6, y + Setter.HALF_CAP, Face.REGULAR, Ink.QUIET);
    }
    setter.line(plot.left(), plot.bottom(), plot.right(), plot.bottom(), Ink.LINE, 0.8);
    for (Tick tick : chart.cost().ticks()) {
      double x = plot.x(tick.at());
      setter.line(x, plot.bottom(), x, plot.bottom() + 3, Ink.LINE, 0.8);
      setter.centre(tick.label(), x, plot.bottom() + 14, Face.REGULAR, Ink.QUIET);
    }
    setter.left(chart.effectTitle(), 0, 9, Face.REGULAR, Ink.QUIET);
    setter.right(chart.costTitle(), plot.right(), plot.bottom() + 28, Face.REGULAR, Ink.QUIET);
  }

  private void ranges(Plot plot, CostEffect.Point point) {
    if (point.cost().isSpread()) {
      plot.bar(point.cost().low(), point.cost().high(), point.effect().likely(), Ink.DATA, 1.2);
    }
    if (point.effect().isSpread()) {
      double[] xs = {point.cost().likely(), point.cost().likely()};
      double[] ys = {point.effect().low(), point.effect().high()};
      plot.line(xs, ys, Ink.DATA, Strokes.butt(1.2));
    }
  }

  private void labels(Plot plot, double width) {
    Rectangle2D bounds =
        new Rectangle2D.Double(
            plot.left() + 1, HEAD - 8, width - plot.left() - 1, plot.bottom() - HEAD + 6);
    LabelPlaces places = new LabelPlaces(bounds);
    for (CostEffect.Point point : chart.points()) {
      double x = x(plot, point);
      double y = y(plot, point);
      places.takeDot(x, y, RADIUS + 1.5);
      places.takeLine(plot.x(point.cost().low()), y, plot.x(point.cost().high()), y);
      places.takeLine(x, plot.y(point.effect().high()), x, plot.y(point.effect().low()));
    }
    for (CostEffect.Point point : chart.points()) {
      label(plot, places, point);
    }
  }

  private void label(Plot plot, LabelPlaces places, CostEffect.Point point) {
    double x = x(plot, point);
    double y = y(plot, point);
    double number = setter.width(point.number() + " ", Face.BOLD);
    // The others are named by the table; many names would hide what the chart shows.
    String name = point.chosen() ? point.label() : "";
    double length = number + setter.width(name, Face.REGULAR);
    LabelPlaces.Place place = places.find(x, y, RADIUS, length, Setter.LINE_HEIGHT - 1);
    if (place.far()) {
      setter.line(x, y, place.nearX(x), place.nearY(y), Ink.QUIET, 0.5);
      setter.dot(x, y, RADIUS, point.chosen());
    }
    if (place.clear()) {
      // Grid lines stop short of the words.
      setter.fill(place.box(), Ink.PAPER);
    }
    double baseline = place.box().getCenterY() + Setter.HALF_CAP;
    double left = place.box().getMinX();
    setter.left(point.number(), left, baseline, Face.BOLD, Ink.INK);
    setter.left(name, left + number, baseline, Face.REGULAR, Ink.INK);
  }

  private static double x(Plot plot, CostEffect.Point point) {
    return plot.x(point.cost().likely());
  }

  private static double y(Plot plot, CostEffect.Point point) {
    return plot.y(point.effect().likely());
  }
}
