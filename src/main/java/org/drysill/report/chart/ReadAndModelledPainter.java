package org.drysill.report.chart;

import java.util.List;
import java.util.function.Function;
import org.drysill.physics.Range;
import org.drysill.report.font.Face;

/** Draws {@link ReadAndModelled}. */
final class ReadAndModelledPainter {
  private static final double GAP = 10;
  private static final double BAR = 10;
  private static final double THIN = 1.2;
  private static final double DOT = 3.2;

  private final ReadAndModelled chart;
  private final Setter setter;

  ReadAndModelledPainter(ReadAndModelled chart, Setter setter) {
    this.chart = chart;
    this.setter = setter;
  }

  void paint(double width, double height) {
    double read = widest(ReadAndModelled.Row::readText) + GAP;
    double modelled = widest(ReadAndModelled.Row::modelledText) + GAP;
    List<String> labels = chart.rows().stream().map(ReadAndModelled.Row::label).toList();
    Rows rows =
        new Rows(setter, chart.axis(), labels, width, height, 2, read + modelled, Rows.LABELS);
    rows.frame();
    bars(rows);
    for (int i = 0; i < chart.rows().size(); i++) {
      ReadAndModelled.Row row = chart.rows().get(i);
      double middle = rows.middle(i);
      double baseline = middle + Setter.HALF_CAP;
      double right = rows.plot().right() + read;
      rows.label(i, row.label(), false);
      setter.right(row.readText(), right, baseline, Face.REGULAR, Ink.INK);
      setter.right(row.modelledText(), right + modelled, baseline, Face.REGULAR, Ink.QUIET);
      double likely = rows.plot().x(row.modelled().likely());
      setter.line(likely, middle - BAR / 2, likely, middle + BAR / 2, Ink.QUIET, THIN);
      row.read().ifPresent(value -> dot(rows.plot(), value, middle, row.explained()));
    }
  }

  private void bars(Rows rows) {
    for (int i = 0; i < chart.rows().size(); i++) {
      Range modelled = chart.rows().get(i).modelled();
      rows.plot().bar(modelled.low(), modelled.high(), rows.at(i), Ink.GRID, BAR);
    }
    rows.plot().paint(setter.canvas().graphics());
  }

  private void dot(Plot plot, Range value, double middle, boolean explained) {
    setter.line(plot.x(value.low()), middle, plot.x(value.high()), middle, Ink.INK, THIN);
    setter.dot(plot.x(value.likely()), middle, DOT, explained);
  }

  private double widest(Function<ReadAndModelled.Row, String> text) {
    return chart.rows().stream()
        .mapToDouble(row -> setter.width(text.apply(row), Face.REGULAR))
        .max()
        .orElse(0);
  }
}
