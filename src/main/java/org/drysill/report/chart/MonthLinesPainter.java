package org.drysill.report.chart;

import java.awt.BasicStroke;
import java.util.List;
import java.util.stream.IntStream;
import org.drysill.report.font.Face;

/** Draws {@link MonthLines}. */
final class MonthLinesPainter {
  private static final double HEAD = 7;
  private static final double FOOT = 17;
  private static final double TO_LABEL = 8;

  private final MonthLines chart;
  private final Setter setter;

  MonthLinesPainter(MonthLines chart, Setter setter) {
    this.chart = chart;
    this.setter = setter;
  }

  void paint(double width, double height) {
    double ticks = widest(chart.axis().ticks().stream().map(Tick::label).toList()) + 6;
    List<String> labels = chart.lines().stream().map(MonthLines.Line::label).toList();
    double ends = Math.min(widest(labels), width * 0.34);
    Axis months = new Axis(0, chart.months().size() - 1.0, List.of());
    double plotWidth = width - ticks - TO_LABEL - ends - 1;
    Plot plot = new Plot(months, chart.axis(), ticks, HEAD, plotWidth, height - HEAD - FOOT);
    frame(plot);
    chart.below().ifPresent(below -> new Hatch(chart, plot, setter).paint(below));
    for (MonthLines.Line line : chart.lines()) {
      double[] xs = IntStream.range(0, line.values().size()).asDoubleStream().toArray();
      double[] ys = line.values().stream().mapToDouble(Double::doubleValue).toArray();
      plot.line(xs, ys, ink(line.style()), stroke(line.style()));
    }
    plot.paint(setter.canvas().graphics());
    ends(plot, ends);
  }

  private void frame(Plot plot) {
    for (Tick tick : chart.axis().ticks()) {
      double y = plot.y(tick.at());
      setter.line(plot.left(), y, plot.right(), y, Ink.GRID, 0.5);
      setter.right(tick.label(), plot.left() - 6, y + Setter.HALF_CAP, Face.REGULAR, Ink.QUIET);
    }
    for (int month = 0; month < chart.months().size(); month++) {
      double x = plot.x(month);
      setter.line(x, plot.bottom(), x, plot.bottom() + 3, Ink.LINE, 0.6);
      String letter = chart.months().get(month);
      setter.centre(letter, x, plot.bottom() + 14, Face.REGULAR, Ink.QUIET);
    }
  }

  /** The labels at the lines' ends, pushed apart where the lines end close to each other. */
  private void ends(Plot plot, double width) {
    int count = chart.lines().size();
    double[] wanted = new double[count];
    for (int i = 0; i < count; i++) {
      List<Double> values = chart.lines().get(i).values();
      wanted[i] = plot.y(values.get(values.size() - 1));
    }
    double[] places = Spread.apart(wanted, Setter.LINE_HEIGHT, plot.top(), plot.bottom());
    for (int i = 0; i < count; i++) {
      MonthLines.Line line = chart.lines().get(i);
      double x = plot.right() + TO_LABEL;
      if (Math.abs(places[i] - wanted[i]) > 1) {
        setter.line(plot.right() + 1, wanted[i], x - 2, places[i], Ink.LINE, 0.5);
      }
      Face face = line.style() == MonthLines.Style.MAIN ? Face.BOLD : Face.REGULAR;
      Ink ink = line.style() == MonthLines.Style.MAIN ? Ink.INK : Ink.TEXT;
      String label = setter.clipped(line.label(), width + 1, face);
      setter.left(label, x, places[i] + Setter.HALF_CAP, face, ink);
    }
  }

  private double widest(List<String> labels) {
    return labels.stream().mapToDouble(label -> setter.width(label, Face.BOLD)).max().orElse(0);
  }

  private static Ink ink(MonthLines.Style style) {
    return switch (style) {
      case MAIN -> Ink.INK;
      case LIMIT -> Ink.DATA;
      case QUIET -> Ink.LINE;
      case DASHED -> Ink.QUIET;
    };
  }

  private static BasicStroke stroke(MonthLines.Style style) {
    return switch (style) {
      case MAIN -> Strokes.round(1.5);
      case LIMIT -> Strokes.round(2.6);
      case QUIET -> Strokes.round(1.1);
      case DASHED -> Strokes.dashed(1);
    };
  }
}
