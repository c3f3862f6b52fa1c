package org.drysill.report.chart;

import java.util.List;
import org.drysill.report.font.Face;

/** The frame of a chart of horizontal bars: row labels at the left, the axis below. */
final class Rows {
  /** The height of the tick labels under the plot. */
  static final double FOOT = 16;

  /** The most that labels usually take of the width. */
  static final double LABELS = 0.34;

  private static final double GAP = 8;

  private final Setter setter;
  private final Plot plot;
  private final Axis axis;
  private final int count;
  private final double labelWidth;

  /**
   * Lays out the frame.
   *
   * @param labels the row labels from top to bottom
   * @param head the height kept free above the rows
   * @param tail the width kept free at the right of the plot
   * @param labelShare the most of the width that the labels may take
   */
  Rows(
      Setter setter,
      Axis axis,
      List<String> labels,
      double width,
      double height,
      double head,
      double tail,
      double labelShare) {
    this.setter = setter;
    this.axis = axis;
    this.count = Math.max(1, labels.size());
    double widest = labels.stream().mapToDouble(l -> setter.width(l, Face.BOLD)).max().orElse(0);
    this.labelWidth = Math.min(widest, width * labelShare);
    // A long number under the start of the axis reaches further left than short labels do.
    double first =
        axis.ticks().stream()
            .limit(1)
            .mapToDouble(t -> setter.width(t.label(), Face.REGULAR) / 2)
            .sum();
    double left = Math.max(labelWidth + GAP, first);
    Axis rows = new Axis(0, count, List.of());
    this.plot =
        new Plot(
            axis,
            rows,
            left,
            head,
            Math.max(40, width - left - tail - 1),
            Math.max(10, height - head - FOOT));
  }

  Plot plot() {
    return plot;
  }

  /** The middle of a row as a value of the upright axis. */
  double at(int row) {
    return count - row - 0.5;
  }

  /** The middle of a row on the canvas. */
  double middle(int row) {
    return plot.y(at(row));
  }

  /** The upper edge of a row on the canvas. */
  double upper(int row) {
    return plot.y(count - row);
  }

  /** Grid lines, tick labels and the line at the start of the axis. */
  void frame() {
    for (Tick tick : axis.ticks()) {
      double x = plot.x(tick.at());
      setter.line(x, plot.top(), x, plot.bottom(), Ink.GRID, 0.5);
    }
    double freeFrom = Double.NEGATIVE_INFINITY;
    for (Tick tick : axis.ticks()) {
      double half = setter.width(tick.label(), Face.REGULAR) / 2;
      double x = plot.x(tick.at());
      if (x - half >= freeFrom) {
        setter.centre(tick.label(), x, plot.bottom() + 12.5, Face.REGULAR, Ink.QUIET);
        freeFrom = x + half + 3;
      }
    }
  }

  /** The label of a row. */
  void label(int row, String text, boolean strong) {
    setter.block(text, 0, middle(row), labelWidth + 4, strong ? Face.BOLD : Face.REGULAR, Ink.INK);
  }

  /** The line where the axis starts, above the bars' ends. */
  void base() {
    double x = plot.x(Math.max(axis.min(), Math.min(0, axis.max())));
    setter.line(x, plot.top(), x, plot.bottom(), Ink.LINE, 0.8);
  }
}
