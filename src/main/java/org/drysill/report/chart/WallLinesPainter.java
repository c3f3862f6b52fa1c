package org.drysill.report.chart;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import org.drysill.report.font.Face;

/** Draws {@link WallLines}. */
final class WallLinesPainter {
  private static final double TITLE = 17;
  private static final double TO_LABEL = 8;

  private final WallLines chart;
  private final Setter setter;

  WallLinesPainter(WallLines chart, Setter setter) {
    this.chart = chart;
    this.setter = setter;
  }

  void paint(double width, double height) {
    double ticks = widest(ticks(), Face.REGULAR) + 6;
    double ends = Math.min(widest(ends(), Face.BOLD), width * 0.28);
    double across = (int) (width - ticks - TO_LABEL - ends - 1);
    WallScale scale = new WallScale(chart.layers(), ticks, across);
    WallNames names = new WallNames(chart.layers(), setter, scale, width);
    double foot = 8 + names.rows() * Setter.LINE_HEIGHT;
    double each = (height - foot) / chart.panels().size();
    for (int i = 0; i < chart.panels().size(); i++) {
      panel(chart.panels().get(i), scale, i * each + TITLE, each - TITLE - 4, ends);
    }
    names.paint(height - foot);
  }

  private Stream<String> ticks() {
    return chart.panels().stream().flatMap(p -> p.axis().ticks().stream()).map(Tick::label);
  }

  private Stream<String> ends() {
    return chart.panels().stream().flatMap(p -> p.lines().stream()).map(WallLines.Line::label);
  }

  private double widest(Stream<String> labels, Face face) {
    return labels.mapToDouble(label -> setter.width(label, face)).max().orElse(0);
  }

  private void panel(
      WallLines.Panel panel, WallScale scale, double top, double height, double ends) {
    double width = scale.right() - scale.left();
    Plot plot =
        new Plot(new Axis(0, width, List.of()), panel.axis(), scale.left(), top, width, height);
    setter.left(panel.title(), scale.left(), top - 5, Face.BOLD, Ink.TEXT);
    layers(scale, plot);
    for (Tick tick : panel.axis().ticks()) {
      double y = plot.y(tick.at());
      setter.line(plot.left(), y, plot.right(), y, Ink.GRID, 0.5);
      setter.right(tick.label(), plot.left() - 6, y + Setter.HALF_CAP, Face.REGULAR, Ink.QUIET);
    }
    panel.lines().forEach(line -> line(line, scale, plot));
    plot.paint(setter.canvas().graphics());
    panel.marks().forEach(mark -> mark(mark, scale, plot));
    LineEnds.paint(
        setter,
        plot,
        ends,
        panel.lines().stream()
            .map(l -> new LineEnds.End(l.label(), l.outside(), l.style()))
            .toList());
  }

  private void layers(WallScale scale, Plot plot) {
    for (int i = 0; i < chart.layers().size(); i++) {
      Rectangle2D band =
          new Rectangle2D.Double(
              scale.edge(i),
              plot.top(),
              scale.edge(i + 1) - scale.edge(i),
              plot.bottom() - plot.top());
      fill(chart.layers().get(i).pattern(), band);
    }
    for (int i = 0; i <= chart.layers().size(); i++) {
      setter.line(scale.edge(i), plot.top(), scale.edge(i), plot.bottom(), Ink.LINE, 0.6);
    }
  }

  private void fill(WallLines.Pattern pattern, Rectangle2D band) {
    switch (pattern) {
      case DIAGONAL -> setter.fill(Stripes.within(band, 9, 0.4, true), Ink.GRID);
      case CROSSED -> {
        setter.fill(Stripes.within(band, 20, 0.4, true), Ink.GRID);
        setter.fill(Stripes.within(band, 20, 0.4, false), Ink.GRID);
      }
      case GROUND -> setter.fill(band, Ink.GROUND);
      case SOLID -> setter.fill(band, Ink.QUIET);
      case EMPTY -> {
        // Air: the paper shows through.
      }
    }
  }

  private static void line(WallLines.Line line, WallScale scale, Plot plot) {
    int last = line.points().size() + 1;
    double[] xs = new double[last + 1];
    double[] ys = new double[last + 1];
    ys[0] = line.room();
    for (int i = 1; i < last; i++) {
      xs[i] = scale.x(line.points().get(i - 1)) - scale.left();
      ys[i] = line.points().get(i - 1).value();
    }
    xs[last] = scale.right() - scale.left();
    ys[last] = line.outside();
    plot.line(xs, ys, LineEnds.ink(line.style()), LineEnds.stroke(line.style()));
  }

  /** A dot, its words above it or, where the panel ends there, below. */
  private void mark(WallLines.Mark mark, WallScale scale, Plot plot) {
    double x = scale.x(mark.at());
    double y = plot.y(mark.at().value());
    setter.dot(x, y, 2.6, true);
    double half = setter.width(mark.label(), Face.REGULAR) / 2;
    double middle = Math.max(scale.left() + half + 2, Math.min(x, scale.right() - half - 2));
    double below = y + 30;
    double baseline = below < plot.bottom() - 3 ? below : y - 24;
    setter.line(
        x,
        y + (baseline > y ? 3 : -3),
        x,
        baseline > y ? baseline - 9.5 : baseline + 3,
        Ink.QUIET,
        0.6);
    setter.fill(middle - half - 2, baseline - 9, 2 * half + 4, Setter.LINE_HEIGHT, Ink.PAPER);
    setter.centre(mark.label(), middle, baseline, Face.REGULAR, Ink.INK);
  }
}
