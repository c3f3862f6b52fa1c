package org.drysill.report.chart;

import java.awt.BasicStroke;
import java.util.List;
import org.drysill.report.font.Face;

/** The labels at the ends of lines, pushed apart where the lines end close to each other. */
final class LineEnds {
  private static final double TO_LABEL = 8;

  private LineEnds() {}

  /**
   * The end of a line.
   *
   * @param label its words
   * @param at its last value
   */
  record End(String label, double at, MonthLines.Style style) {}

  static void paint(Setter setter, Plot plot, double width, List<End> ends) {
    double[] wanted = ends.stream().mapToDouble(e -> plot.y(e.at())).toArray();
    double[] places = Spread.apart(wanted, Setter.LINE_HEIGHT, plot.top(), plot.bottom());
    for (int i = 0; i < ends.size(); i++) {
      double x = plot.right() + TO_LABEL;
      if (Math.abs(places[i] - wanted[i]) > 1) {
        setter.line(plot.right() + 1, wanted[i], x - 2, places[i], Ink.LINE, 0.5);
      }
      boolean main = ends.get(i).style() == MonthLines.Style.MAIN;
      Face face = main ? Face.BOLD : Face.REGULAR;
      String label = setter.clipped(ends.get(i).label(), width + 1, face);
      setter.left(label, x, places[i] + Setter.HALF_CAP, face, main ? Ink.INK : Ink.TEXT);
    }
  }

  static Ink ink(MonthLines.Style style) {
    return switch (style) {
      case MAIN -> Ink.INK;
      case LIMIT -> Ink.DATA;
      case QUIET -> Ink.QUIET;
      case DASHED -> Ink.QUIET;
    };
  }

  static BasicStroke stroke(MonthLines.Style style) {
    return switch (style) {
      case MAIN -> Strokes.round(1.5);
      case LIMIT -> Strokes.round(2.6);
      case QUIET -> Strokes.dotted(1.4);
      case DASHED -> Strokes.dashed(1);
    };
  }
}
