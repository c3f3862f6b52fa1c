package org.drysill.report.chart;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.drysill.report.font.Face;

/** Draws {@link CycleCurve}. */
final class CycleCurvePainter {
  private static final double HEAD = 15;
  private static final double FOOT = 18;
  private static final double TO_LABEL = 6;
  private static final double SPACING = 6;
  private static final double STRIPE = 0.5;

  private final CycleCurve chart;
  private final Setter setter;

  CycleCurvePainter(CycleCurve chart, Setter setter) {
    this.chart = chart;
    this.setter = setter;
  }

  void paint(double width, double height) {
    double left =
        6
            + chart.temperature().ticks().stream()
                .mapToDouble(tick -> setter.width(tick.label(), Face.REGULAR))
                .max()
                .orElse(0);
    List<CycleCurve.Level> levels = new ArrayList<>(chart.levels());
    levels.add(chart.mean());
    double right =
        TO_LABEL
            + levels.stream()
                .mapToDouble(level -> setter.width(level.label(), Face.REGULAR))
                .max()
                .orElse(0);
    Plot plot =
        new Plot(
            chart.time(),
            chart.temperature(),
            left,
            HEAD,
            width - left - right - 1,
            height - HEAD - FOOT);
    grid(plot);
    hatch(chart.halves().get(0), plot);
    chart.halves().forEach(half -> head(half, plot));
    for (CycleCurve.Level level : chart.levels()) {
      double y = plot.y(level.at());
      setter.line(plot.left(), y, plot.right(), y, Ink.QUIET, 0.7);
    }
    CycleCurve.Half supply = chart.halves().get(0);
    double mean = plot.y(chart.mean().at());
    setter.line(plot.x(supply.from()), mean, plot.x(supply.to()), mean, Ink.INK, 2.6);
    double[] times = chart.curve().stream().mapToDouble(CycleCurve.At::time).toArray();
    double[] values = chart.curve().stream().mapToDouble(CycleCurve.At::temperature).toArray();
    plot.line(times, values, Ink.INK, Strokes.round(1.2));
    plot.paint(setter.canvas().graphics());
    labels(levels, plot);
    foot(plot);
  }

  private void grid(Plot plot) {
    for (Tick tick : chart.temperature().ticks()) {
      double y = plot.y(tick.at());
      setter.line(plot.left(), y, plot.right(), y, Ink.GRID, 0.5);
      setter.right(tick.label(), plot.left() - 6, y + Setter.HALF_CAP, Face.REGULAR, Ink.QUIET);
    }
  }

  /** Told apart by a pattern, which a copier keeps. */
  private void hatch(CycleCurve.Half half, Plot plot) {
    double x = plot.x(half.from());
    Rectangle2D ground =
        new Rectangle2D.Double(x, plot.top(), plot.x(half.to()) - x, plot.bottom() - plot.top());
    setter.fill(Stripes.within(ground, SPACING, STRIPE, true), Ink.LINE);
  }

  private void head(CycleCurve.Half half, Plot plot) {
    double from = plot.x(half.from());
    setter.line(from, plot.top() - 4, from, plot.bottom(), Ink.LINE, 0.6);
    setter.left(half.label(), from + 3, plot.top() - 4, Face.BOLD, Ink.INK);
  }

  private void labels(List<CycleCurve.Level> levels, Plot plot) {
    double[] wanted = levels.stream().mapToDouble(level -> plot.y(level.at())).toArray();
    double[] places = Spread.apart(wanted, Setter.LINE_HEIGHT, plot.top(), plot.bottom());
    for (int i = 0; i < wanted.length; i++) {
      setter.left(
          levels.get(i).label(),
          plot.right() + TO_LABEL,
          places[i] + Setter.HALF_CAP,
          Face.REGULAR,
          Ink.TEXT);
    }
  }

  private void foot(Plot plot) {
    setter.line(plot.left(), plot.bottom(), plot.right(), plot.bottom(), Ink.LINE, 0.8);
    for (Tick tick : chart.time().ticks()) {
      double x = plot.x(tick.at());
      setter.line(x, plot.bottom(), x, plot.bottom() + 3, Ink.LINE, 0.6);
      setter.centre(tick.label(), x, plot.bottom() + 13.5, Face.REGULAR, Ink.QUIET);
    }
  }
}
