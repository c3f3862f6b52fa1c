package org.drysill.report.chart;

import java.awt.geom.Ellipse2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.report.font.Face;

/** Draws {@link RuleBars}. */
final class RuleBarsPainter {
  private static final double BAND_LINE = 17;
  private static final double SECOND_LINE = 13;
  private static final double LABELS = 0.47;
  private static final double BETWEEN_WORDS = 4;
  private static final double AFTER_PLOT = 9;
  private static final double DOT = 2.8;

  private final RuleBars bars;
  private final Setter setter;

  RuleBarsPainter(RuleBars bars, Setter setter) {
    this.bars = bars;
    this.setter = setter;
  }

  void paint(double width, double height) {
    List<String> labels = bars.rows().stream().map(RuleBars.Row::label).toList();
    double head =
        2
            + (bars.provided().isPresent() ? BAND_LINE : 0)
            + (bars.second().isPresent() ? SECOND_LINE : 0);
    Rows rows = new Rows(setter, bars.axis(), labels, width, height, head, valueWidth(), LABELS);
    Plot plot = rows.plot();
    bars.provided().ifPresent(band -> ground(band, plot));
    rows.frame();
    bars.second().ifPresent(second -> second(second, plot));
    rows.base();
    bars.provided().ifPresent(band -> line(band, plot));
    for (int i = 0; i < bars.rows().size(); i++) {
      RuleBars.Row row = bars.rows().get(i);
      if (row.quoted() && i > 0 && !bars.rows().get(i - 1).quoted()) {
        setter.line(0, rows.upper(i), width, rows.upper(i), Ink.LINE, 0.5);
      }
      dots(rows, i);
      words(rows, i);
    }
  }

  private void second(RuleBars.Second second, Plot plot) {
    for (Tick tick : second.ticks()) {
      double x = plot.x(tick.at());
      setter.line(x, plot.top() - 3, x, plot.top(), Ink.LINE, 0.8);
      setter.centre(tick.label(), x, plot.top() - 5, Face.REGULAR, Ink.QUIET);
    }
    unit(second.unit(), second.ticks(), plot, plot.top() - 5);
    unit(second.firstUnit(), bars.axis().ticks(), plot, plot.bottom() + 12.5);
  }

  /** The unit of an axis, clear of its last label. */
  private void unit(String unit, List<Tick> ticks, Plot plot, double baseline) {
    double labels =
        ticks.stream()
            .mapToDouble(t -> plot.x(t.at()) + setter.width(t.label(), Face.REGULAR) / 2)
            .max()
            .orElse(0);
    double left = Math.max(plot.right() + AFTER_PLOT, labels + BETWEEN_WORDS);
    setter.left(unit, left, baseline, Face.REGULAR, Ink.QUIET);
  }

  private void dots(Rows rows, int index) {
    RuleBars.Row row = bars.rows().get(index);
    double middle = rows.middle(index);
    Optional<Double> least = row.values().stream().min(Comparator.naturalOrder());
    Optional<Double> most = row.values().stream().max(Comparator.naturalOrder());
    if (least.isPresent() && most.isPresent()) {
      double from = rows.plot().x(least.get());
      setter.line(from, middle, rows.plot().x(most.get()), middle, Ink.LINE, 1);
    }
    for (double value : row.values()) {
      double x = rows.plot().x(value);
      if (row.governing() || row.quoted()) {
        setter.dot(x, middle, row.governing() ? DOT + 0.8 : DOT, row.governing());
      } else {
        setter.fill(new Ellipse2D.Double(x - DOT, middle - DOT, 2 * DOT, 2 * DOT), Ink.QUIET);
      }
    }
  }

  private void words(Rows rows, int index) {
    RuleBars.Row row = bars.rows().get(index);
    double baseline = rows.middle(index) + Setter.HALF_CAP;
    Face face = row.governing() ? Face.BOLD : Face.REGULAR;
    String label = setter.clipped(row.label(), rows.plot().left() - 4, face);
    setter.left(label, 0, baseline, face, Ink.INK);
    Ink ink = row.values().isEmpty() ? Ink.QUIET : Ink.INK;
    setter.left(row.valueText(), rows.plot().right() + AFTER_PLOT, baseline, face, ink);
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
    setter.line(likely, plot.top(), likely, plot.bottom(), Ink.INK, 1.2);
    double half = setter.width(band.label(), Face.REGULAR) / 2;
    double middle = Math.max(plot.left() + half, Math.min(likely, plot.right() - half));
    double second = bars.second().isPresent() ? SECOND_LINE : 0;
    setter.centre(band.label(), middle, plot.top() - 6 - second, Face.REGULAR, Ink.INK);
  }

  private double valueWidth() {
    return AFTER_PLOT
        + bars.rows().stream()
            .mapToDouble(
                row -> setter.width(row.valueText(), row.governing() ? Face.BOLD : Face.REGULAR))
            .max()
            .orElse(0);
  }
}
