package org.drysill.report.chart;

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
      plot.line(xs, ys, LineEnds.ink(line.style()), LineEnds.stroke(line.style()));
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

  private void ends(Plot plot, double width) {
    LineEnds.paint(
        setter,
        plot,
        width,
        chart.lines().stream()
            .map(l -> new LineEnds.End(l.label(), l.values().get(l.values().size() - 1), l.style()))
            .toList());
  }

  private double widest(List<String> labels) {
    return labels.stream().mapToDouble(label -> setter.width(label, Face.BOLD)).max().orElse(0);
  }
}
