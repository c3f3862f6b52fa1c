package org.drysill.report.chart;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.drysill.report.font.Face;

/** Draws {@link Tornado}. */
final class TornadoPainter {
  private static final double BAR = 11;
  private static final double HEAD = 32;
  private static final double GAP = 10;
  private static final double SWATCH = 9;
  private static final double LABELS = 0.44;
  private static final String LOW = "input low";
  private static final String HIGH = "input high";

  private final Tornado chart;
  private final Setter setter;

  TornadoPainter(Tornado chart, Setter setter) {
    this.chart = chart;
    this.setter = setter;
  }

  void paint(double width, double height) {
    List<String> labels = chart.rows().stream().map(Tornado.Row::label).toList();
    double tail =
        GAP
            + chart.rows().stream()
                .mapToDouble(r -> setter.width(r.share(), Face.REGULAR))
                .max()
                .orElse(0);
    Rows rows = new Rows(setter, chart.axis(), labels, width, height, HEAD, tail, LABELS);
    rows.frame();
    for (int i = 0; i < chart.rows().size(); i++) {
      Tornado.Row row = chart.rows().get(i);
      rows.label(i, row.label(), false);
      side(rows, i, row.atLow(), false);
      side(rows, i, row.atHigh(), true);
      setter.right(row.share(), width, rows.middle(i) + Setter.HALF_CAP, Face.REGULAR, Ink.INK);
    }
    double x = rows.plot().x(chart.middle());
    setter.line(x, rows.plot().top(), x, rows.plot().bottom(), Ink.LINE, 0.8);
    chart.target().ifPresent(t -> target(rows.plot(), t));
    key(width);
  }

  private void side(Rows rows, int row, double at, boolean high) {
    double from = rows.plot().x(Math.min(at, chart.middle()));
    double to = rows.plot().x(Math.max(at, chart.middle()));
    fill(
        new Rectangle2D.Double(from, rows.middle(row) - BAR / 2, Math.max(0.5, to - from), BAR),
        high);
  }

  private void fill(Rectangle2D box, boolean high) {
    setter.fill(box, high ? Ink.TEXT : Ink.PAPER);
    if (!high) {
      setter.fill(Stripes.within(box, 4.5, 0.9, true), Ink.LINE);
    }
    setter.outline(box, Ink.TEXT, 0.6);
  }

  private void target(Plot plot, double target) {
    double x = plot.x(target);
    setter.line(x, plot.top() - 4, x, plot.bottom(), Ink.INK, 1.6);
    double half = setter.width(chart.targetText(), Face.BOLD) / 2;
    double middle = Math.max(plot.left() + half, Math.min(x, plot.right() - half));
    setter.centre(chart.targetText(), middle, plot.top() - 7, Face.BOLD, Ink.INK);
  }

  private void key(double width) {
    double baseline = 9;
    setter.right("share of the spread", width, baseline, Face.REGULAR, Ink.QUIET);
    double x = 0;
    for (boolean high : new boolean[] {false, true}) {
      String words = high ? HIGH : LOW;
      fill(new Rectangle2D.Double(x, baseline - 8, SWATCH, SWATCH), high);
      setter.left(words, x + SWATCH + 4, baseline, Face.REGULAR, Ink.INK);
      x += SWATCH + 4 + setter.width(words, Face.REGULAR) + 14;
    }
  }
}
