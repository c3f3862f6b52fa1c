package org.drysill.report.chart;

import java.util.List;
import org.drysill.report.font.Face;

/** Draws {@link SourceBars}. */
final class SourceBarsPainter {
  private static final double BAR = 10;
  private static final double GAP = 10;

  private final SourceBars bars;
  private final Setter setter;

  SourceBarsPainter(SourceBars bars, Setter setter) {
    this.bars = bars;
    this.setter = setter;
  }

  void paint(double width, double height) {
    List<String> labels = bars.rows().stream().map(SourceBars.Row::label).toList();
    double values =
        bars.rows().stream()
            .mapToDouble(row -> setter.width(row.valueText(), face(row)))
            .max()
            .orElse(0);
    Rows rows = new Rows(setter, bars.axis(), labels, width, height, 2, values + GAP, Rows.LABELS);
    rows.frame();
    for (int i = 0; i < bars.rows().size(); i++) {
      bar(rows.plot(), bars.rows().get(i), rows.at(i));
    }
    rows.plot().paint(setter.canvas().graphics());
    rows.base();
    for (int i = 0; i < bars.rows().size(); i++) {
      SourceBars.Row row = bars.rows().get(i);
      rows.label(i, row.label(), row.sum());
      double baseline = rows.middle(i) + Setter.HALF_CAP;
      setter.right(row.valueText(), width, baseline, face(row), Ink.INK);
      if (row.sum() && i > 0) {
        setter.line(0, rows.upper(i), width, rows.upper(i), Ink.LINE, 0.5);
      }
    }
  }

  private void bar(Plot plot, SourceBars.Row row, double at) {
    plot.bar(start(), row.value().likely(), at, row.sum() ? Ink.LINE : Ink.DATA, BAR);
    if (row.value().isSpread()) {
      plot.bar(row.value().low(), row.value().high(), at, Ink.INK, 1.5);
    }
  }

  /** Where bars begin: at zero, where the axis has it. */
  private double start() {
    return Math.max(bars.axis().min(), Math.min(0, bars.axis().max()));
  }

  private static Face face(SourceBars.Row row) {
    return row.sum() ? Face.BOLD : Face.REGULAR;
  }
}
