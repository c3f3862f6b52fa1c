package org.drysill.report.chart;

import java.awt.geom.Rectangle2D;
import org.drysill.report.font.Face;

/** Draws {@link MonthPairs}. */
final class MonthPairsPainter {
  private static final double HEAD = 36;
  private static final double FOOT = 16;
  private static final double BAR = 11;
  private static final double BETWEEN = 4;
  private static final double SWATCH = 9;

  private final MonthPairs chart;
  private final Setter setter;

  MonthPairsPainter(MonthPairs chart, Setter setter) {
    this.chart = chart;
    this.setter = setter;
  }

  void paint(double width, double height) {
    double each = (height - FOOT) / chart.panels().size();
    for (int i = 0; i < chart.panels().size(); i++) {
      panel(chart.panels().get(i), width, i * each, (i + 1) * each);
    }
    for (int month = 0; month < chart.months().size(); month++) {
      setter.centre(
          chart.months().get(month), middle(width, month), height - 3, Face.REGULAR, Ink.QUIET);
    }
  }

  private double middle(double width, int month) {
    return width * (month + 0.5) / chart.months().size();
  }

  private void panel(MonthPairs.Panel panel, double width, double top, double bottom) {
    head(panel, width, top);
    double one = (bottom - top - HEAD) / Math.max(1, panel.most());
    for (int month = 0; month < chart.months().size(); month++) {
      double x = middle(width, month);
      int before = panel.before().get(month);
      int after = panel.after().get(month);
      bar(x - BETWEEN / 2 - BAR, bottom, before, one, false);
      // Nothing before and nothing after needs no second nought.
      if (before > 0 || after > 0) {
        bar(x + BETWEEN / 2, bottom, after, one, true);
      }
    }
    setter.line(0, bottom, width, bottom, Ink.LINE, 0.8);
  }

  private void head(MonthPairs.Panel panel, double width, double top) {
    double baseline = top + 17;
    double right = width;
    setter.right(chart.after(), right, baseline, Face.REGULAR, Ink.INK);
    right -= setter.width(chart.after(), Face.REGULAR) + 4 + SWATCH;
    fill(new Rectangle2D.Double(right, baseline - 8, SWATCH, SWATCH), true);
    right -= 12;
    setter.right(chart.before(), right, baseline, Face.REGULAR, Ink.INK);
    right -= setter.width(chart.before(), Face.REGULAR) + 4 + SWATCH;
    fill(new Rectangle2D.Double(right, baseline - 8, SWATCH, SWATCH), false);
    setter.left(
        setter.clipped(panel.label(), right - 8, Face.BOLD), 0, baseline, Face.BOLD, Ink.INK);
  }

  private void bar(double x, double bottom, int count, double one, boolean after) {
    if (count > 0) {
      fill(new Rectangle2D.Double(x, bottom - count * one, BAR, count * one), after);
    }
    setter.centre(
        Integer.toString(count),
        x + BAR / 2,
        bottom - count * one - 3,
        Face.REGULAR,
        count > 0 ? Ink.INK : Ink.QUIET);
  }

  private void fill(Rectangle2D box, boolean after) {
    setter.fill(box, after ? Ink.TEXT : Ink.PAPER);
    if (!after) {
      setter.fill(Stripes.within(box, 4.5, 0.9, true), Ink.LINE);
    }
    setter.outline(box, Ink.TEXT, 0.6);
  }
}
