package org.drysill.report.chart;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import org.drysill.report.font.Face;

/** Hatches where one line of a {@link MonthLines} lies below another. */
final class Hatch {
  private static final double SPACING = 4.2;
  private static final double THICKNESS = 0.6;

  private final MonthLines chart;
  private final Plot plot;
  private final Setter setter;

  Hatch(MonthLines chart, Plot plot, Setter setter) {
    this.chart = chart;
    this.plot = plot;
    this.setter = setter;
  }

  void paint(MonthLines.Below below) {
    Area area = area(chart.lines().get(below.lower()), chart.lines().get(below.upper()));
    if (area.isEmpty()) {
      return;
    }
    setter.fill(area, Ink.GROUND);
    setter.fill(Stripes.within(area, SPACING, THICKNESS, true), Ink.LINE);
    label(below);
  }

  /** Between two months both lines are straight, so that one crossing at most lies between. */
  private Area area(MonthLines.Line lower, MonthLines.Line upper) {
    Area area = new Area();
    for (int month = 1; month < lower.values().size(); month++) {
      double gapBefore = upper.values().get(month - 1) - lower.values().get(month - 1);
      double gapAfter = upper.values().get(month) - lower.values().get(month);
      if (gapBefore <= 0 && gapAfter <= 0) {
        continue;
      }
      double from = gapBefore >= 0 ? 0 : gapBefore / (gapBefore - gapAfter);
      double to = gapAfter >= 0 ? 1 : gapBefore / (gapBefore - gapAfter);
      Path2D piece = new Path2D.Double();
      piece.moveTo(plot.x(month - 1 + from), plot.y(at(lower, month, from)));
      piece.lineTo(plot.x(month - 1 + to), plot.y(at(lower, month, to)));
      piece.lineTo(plot.x(month - 1 + to), plot.y(at(upper, month, to)));
      piece.lineTo(plot.x(month - 1 + from), plot.y(at(upper, month, from)));
      piece.closePath();
      area.add(new Area(piece));
    }
    return area;
  }

  private static double at(MonthLines.Line line, int month, double share) {
    double before = line.values().get(month - 1);
    return before + share * (line.values().get(month) - before);
  }

  /** The words stand under the place where the gap is widest. */
  private void label(MonthLines.Below below) {
    MonthLines.Line lower = chart.lines().get(below.lower());
    MonthLines.Line upper = chart.lines().get(below.upper());
    int widest = 0;
    for (int month = 1; month < lower.values().size(); month++) {
      if (gap(upper, lower, month) > gap(upper, lower, widest)) {
        widest = month;
      }
    }
    double half = setter.width(below.label(), Face.REGULAR) / 2;
    double x = Math.max(plot.left() + half + 3, plot.x(widest));
    x = Math.min(x, plot.right() - half - 3);
    double y = plot.y(lower.values().get(widest));
    double baseline = Math.min(y + 20, plot.bottom() - 4);
    setter.line(x, y + 2, x, baseline - 9.5, Ink.QUIET, 0.6);
    setter.centre(below.label(), x, baseline, Face.REGULAR, Ink.INK);
  }

  private static double gap(MonthLines.Line upper, MonthLines.Line lower, int month) {
    return upper.values().get(month) - lower.values().get(month);
  }
}
