package org.drysill.report.chart;

import java.util.List;
import org.drysill.report.font.Face;

/** Draws {@link RuleBars}. */
final class RuleBarsPainter {
  private static final double HEAD = 18;
  private static final double BAR = 9;
  private static final double LABELS = 0.46;
  private static final double AFTER_BAR = 5;

  private final RuleBars bars;
  private final Setter setter;

  RuleBarsPainter(RuleBars bars, Setter setter) {
    this.bars = bars;
    this.setter = setter;
  }

  void paint(double width, double height) {
    List<String> labels = bars.rows().stream().map(RuleBars.Row::label).toList();
    double head = bars.provided().isPresent() ? HEAD : 2;
    Rows rows = new Rows(setter, bars.axis(), labels, width, height, head, valueWidth(), LABELS);
    Plot plot = rows.plot();
    bars.provided().ifPresent(band -> ground(band, plot));
    rows.frame();
    for (int i = 0; i < bars.rows().size(); i++) {
      RuleBars.Row row = bars.rows().get(i);
      int index = i;
      row.value()
          .ifPresent(
              value ->
                  plot.bar(
                      bars.axis().min(),
                      value,
                      rows.at(index),
                      row.governing() ? Ink.DATA : Ink.GRID,
                      BAR));
    }
    plot.paint(setter.canvas().graphics());
    rows.base();
    bars.provided().ifPresent(band -> line(band, plot));
    for (int i = 0; i < bars.rows().size(); i++) {
      words(rows, i);
    }
  }

  private void words(Rows rows, int index) {
    RuleBars.Row row = bars.rows().get(index);
    rows.label(index, row.label(), row.governing());
    Face face = row.governing() ? Face.BOLD : Face.REGULAR;
    Ink ink = row.value().isPresent() ? Ink.INK : Ink.QUIET;
    double baseline = rows.middle(index) + Setter.HALF_CAP;
    setter.left(row.valueText(), rows.plot().right() + AFTER_BAR, baseline, face, ink);
  }

  private void ground(RuleBars.Band band, Plot plot) {
    double low = plot.x(Math.max(band.range().low(), bars.axis().min()));
    double high = plot.x(Math.min(band.range().high(), bars.axis().max()));
    setter.fill(low, plot.top(), high - low, plot.bottom() - plot.top(), Ink.GROUND);
  }

  private void line(RuleBars.Band band, Plot plot) {
    double low = plot.x(Math.max(band.range().low(), bars.axis().min()));
    double high = plot.x(Math.min(band.range().high(), bars.axis().max()));
    double likely = plot.x(band.range().likely());
    setter.line(low, plot.top(), high, plot.top(), Ink.INK, 1.2);
    setter.line(likely, plot.top() - 3, likely, plot.bottom(), Ink.INK, 1.2);
    double half = setter.width(band.label(), Face.REGULAR) / 2;
    double middle = Math.max(plot.left() + half, Math.min(likely, plot.right() - half));
    setter.centre(band.label(), middle, plot.top() - 6, Face.REGULAR, Ink.INK);
  }

  private double valueWidth() {
    return AFTER_BAR
        + bars.rows().stream()
            .mapToDouble(
                row -> setter.width(row.valueText(), row.governing() ? Face.BOLD : Face.REGULAR))
            .max()
            .orElse(0);
  }
}
