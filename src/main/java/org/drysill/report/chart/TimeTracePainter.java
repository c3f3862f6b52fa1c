package org.drysill.report.chart;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drysill.report.font.Face;

/** Draws {@link TimeTrace}. */
final class TimeTracePainter {
  private static final double HEAD = 13;
  private static final double BETWEEN = 21;
  private static final double FOOT = 16;
  private static final double ROW = 12.5;
  private static final double TO_LABEL = 6;
  private static final double TOUCHING = 1e-6;

  private final TimeTrace chart;
  private final Setter setter;

  TimeTracePainter(TimeTrace chart, Setter setter) {
    this.chart = chart;
    this.setter = setter;
  }

  void paint(double width, double height) {
    double left = widest(chart.panels().stream().flatMap(p -> labels(p.axis()))) + 6;
    double right = widest(endLabels()) + TO_LABEL;
    double marks = chart.marks().size() * ROW;
    int count = chart.panels().size();
    double each = (height - HEAD - FOOT - marks - BETWEEN * (count - 1)) / count;
    Plot last = null;
    for (int i = 0; i < count; i++) {
      TimeTrace.Panel panel = chart.panels().get(i);
      double top = HEAD + i * (each + BETWEEN);
      last = new Plot(chart.time(), panel.axis(), left, top, width - left - right - 1, each);
      panel(panel, last);
    }
    for (int i = 0; i < chart.marks().size(); i++) {
      marks(chart.marks().get(i), last, last.bottom() + 3 + ROW * i);
    }
    times(last, last.bottom() + marks);
  }

  private void panel(TimeTrace.Panel panel, Plot plot) {
    for (Tick tick : panel.axis().ticks()) {
      double y = plot.y(tick.at());
      setter.line(plot.left(), y, plot.right(), y, Ink.GRID, 0.5);
      setter.right(tick.label(), plot.left() - 6, y + Setter.HALF_CAP, Face.REGULAR, Ink.QUIET);
    }
    for (List<TimeTrace.Band> run : runs(panel.bands())) {
      setter.fill(shape(run, plot), Ink.QUIET);
    }
    double[] wanted = panel.limits().stream().mapToDouble(l -> plot.y(l.at())).toArray();
    double[] places = Spread.apart(wanted, Setter.LINE_HEIGHT, plot.top(), plot.bottom());
    for (int i = 0; i < wanted.length; i++) {
      setter.line(plot.left(), wanted[i], plot.right(), wanted[i], Ink.INK, 0.7);
      String label = panel.limits().get(i).label();
      double x = plot.right() + TO_LABEL;
      setter.left(label, x, places[i] + Setter.HALF_CAP, Face.REGULAR, Ink.TEXT);
    }
    setter.left(panel.label(), plot.left(), plot.top() - 4, Face.BOLD, Ink.INK);
  }

  /** Bands that follow each other without a gap make one shape. */
  private static List<List<TimeTrace.Band>> runs(List<TimeTrace.Band> bands) {
    List<List<TimeTrace.Band>> runs = new ArrayList<>();
    double end = Double.NaN;
    for (TimeTrace.Band band : bands) {
      if (!(Math.abs(band.from() - end) < TOUCHING)) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(band);
      end = band.to();
    }
    return runs;
  }

  /** Never thinner than a hair, so that a steady value still shows. */
  private static Path2D shape(List<TimeTrace.Band> run, Plot plot) {
    Path2D path = new Path2D.Double();
    TimeTrace.Band first = run.get(0);
    path.moveTo(plot.x(first.from()), plot.y(first.high()) - 0.4);
    for (TimeTrace.Band band : run) {
      path.lineTo(plot.x((band.from() + band.to()) / 2), plot.y(band.high()) - 0.4);
    }
    TimeTrace.Band last = run.get(run.size() - 1);
    path.lineTo(plot.x(last.to()), plot.y(last.high()) - 0.4);
    path.lineTo(plot.x(last.to()), plot.y(last.low()) + 0.4);
    for (int i = run.size() - 1; i >= 0; i--) {
      TimeTrace.Band band = run.get(i);
      path.lineTo(plot.x((band.from() + band.to()) / 2), plot.y(band.low()) + 0.4);
    }
    path.lineTo(plot.x(first.from()), plot.y(first.low()) + 0.4);
    path.closePath();
    return path;
  }

  private void marks(TimeTrace.Marks marks, Plot plot, double top) {
    for (double at : marks.at()) {
      double x = plot.x(at);
      setter.line(x, top, x, top + ROW - 4, Ink.INK, 0.9);
    }
    double baseline = top + (ROW - 4) / 2 + Setter.HALF_CAP;
    setter.left(marks.label(), plot.right() + TO_LABEL, baseline, Face.REGULAR, Ink.TEXT);
  }

  private void times(Plot plot, double top) {
    setter.line(plot.left(), top, plot.right(), top, Ink.LINE, 0.8);
    for (Tick tick : chart.time().ticks()) {
      double x = plot.x(tick.at());
      setter.line(x, top, x, top + 3, Ink.LINE, 0.6);
      setter.centre(tick.label(), x, top + 13.5, Face.REGULAR, Ink.QUIET);
    }
  }

  private static Stream<String> labels(Axis axis) {
    return axis.ticks().stream().map(Tick::label);
  }

  private Stream<String> endLabels() {
    return Stream.concat(
        chart.panels().stream().flatMap(p -> p.limits().stream()).map(TimeTrace.Limit::label),
        chart.marks().stream().map(TimeTrace.Marks::label));
  }

  private double widest(Stream<String> labels) {
    return labels.mapToDouble(label -> setter.width(label, Face.REGULAR)).max().orElse(0);
  }
}
