package org.drysill.report.chart;

import java.util.List;
import java.util.function.Function;
import org.drysill.report.font.Face;

/** Draws {@link RangeBars}. */
final class RangeBarsPainter {
  private static final double GAP = 10;
  private static final double MARK = 13;
  private static final double BAR = 12;

  private final RangeBars bars;
  private final Setter setter;

  RangeBarsPainter(RangeBars bars, Setter setter) {
    this.bars = bars;
    this.setter = setter;
  }

  void paint(double width, double height) {
    double values = widest(RangeBars.Row::valueText);
    double asked = widest(RangeBars.Row::requiredText);
    double verdicts =
        bars.rows().stream()
            .flatMap(row -> row.verdict().stream())
            .mapToDouble(v -> MARK + setter.width(bars.words().get(v), Face.REGULAR))
            .max()
            .orElse(0);
    double tail = gap(values) + gap(asked) + gap(verdicts);
    List<String> labels = bars.rows().stream().map(RangeBars.Row::label).toList();
    Rows rows = new Rows(setter, bars.axis(), labels, width, height, 2, tail, Rows.LABELS);
    rows.frame();
    draw(rows);
    for (int i = 0; i < bars.rows().size(); i++) {
      RangeBars.Row row = bars.rows().get(i);
      double baseline = rows.middle(i) + Setter.HALF_CAP;
      double right = rows.plot().right() + gap(values);
      rows.label(i, row.label(), false);
      setter.right(row.valueText(), right, baseline, Face.REGULAR, Ink.INK);
      setter.right(row.requiredText(), right + gap(asked), baseline, Face.REGULAR, Ink.QUIET);
      verdict(row, width - verdicts, rows.middle(i));
      required(row, rows, i);
    }
  }

  private void draw(Rows rows) {
    double thin = 1.5;
    for (int i = 0; i < bars.rows().size(); i++) {
      RangeBars.Row row = bars.rows().get(i);
      double at = rows.at(i);
      Plot plot = rows.plot();
      plot.bar(bars.axis().min(), bars.axis().max(), at, Ink.GROUND, BAR);
      plot.bar(bars.axis().min(), row.provided().likely(), at, Ink.DATA, BAR);
      if (row.provided().isSpread()) {
        plot.bar(row.provided().low(), row.provided().high(), at, Ink.INK, thin);
      }
    }
    rows.plot().paint(setter.canvas().graphics());
  }

  private void verdict(RangeBars.Row row, double x, double middle) {
    row.verdict()
        .ifPresent(
            verdict -> {
              setter.mark(verdict, x, middle);
              String word = bars.words().get(verdict);
              setter.left(word, x + MARK, middle + Setter.HALF_CAP, Face.REGULAR, Ink.INK);
            });
  }

  private void required(RangeBars.Row row, Rows rows, int index) {
    row.required()
        .ifPresent(
            required -> {
              double x = rows.plot().x(required);
              double reach = BAR / 2 + 3;
              double middle = rows.middle(index);
              setter.line(x, middle - reach, x, middle + reach, Ink.INK, 1.6);
            });
  }

  private double widest(Function<RangeBars.Row, String> text) {
    return bars.rows().stream()
        .mapToDouble(row -> setter.width(text.apply(row), Face.REGULAR))
        .max()
        .orElse(0);
  }

  private static double gap(double width) {
    return width > 0 ? width + GAP : 0;
  }
}
