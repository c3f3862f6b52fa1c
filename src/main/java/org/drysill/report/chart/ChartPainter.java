package org.drysill.report.chart;

import org.drysill.report.font.Fonts;

/** Draws any chart on any canvas. */
public final class ChartPainter {
  private ChartPainter() {}

  /**
   * Draws a chart.
   *
   * @param width of the canvas, in 1/96 inch
   * @param height of the canvas, in 1/96 inch
   */
  public static void paint(
      ChartSpec chart, Canvas canvas, Fonts fonts, double width, double height) {
    Setter setter = new Setter(canvas, fonts);
    if (chart instanceof RangeBars bars) {
      new RangeBarsPainter(bars, setter).paint(width, height);
    } else if (chart instanceof RuleBars bars) {
      new RuleBarsPainter(bars, setter).paint(width, height);
    } else if (chart instanceof MonthLines lines) {
      new MonthLinesPainter(lines, setter).paint(width, height);
    } else if (chart instanceof SourceBars bars) {
      new SourceBarsPainter(bars, setter).paint(width, height);
    } else if (chart instanceof CostEffect points) {
      new CostEffectPainter(points, setter).paint(width, height);
    } else if (chart instanceof CostStack bars) {
      new CostStackPainter(bars, setter).paint(width, height);
    } else if (chart instanceof MonthPairs pairs) {
      new MonthPairsPainter(pairs, setter).paint(width, height);
    } else if (chart instanceof Tornado bars) {
      new TornadoPainter(bars, setter).paint(width, height);
    } else if (chart instanceof AirSketch sketch) {
      new AirSketchPainter(sketch, setter).paint(width);
    } else if (chart instanceof WallLines wall) {
      new WallLinesPainter(wall, setter).paint(width, height);
    } else if (chart instanceof ReadAndModelled rooms) {
      new ReadAndModelledPainter(rooms, setter).paint(width, height);
    } else if (chart instanceof TimeTrace trace) {
      new TimeTracePainter(trace, setter).paint(width, height);
    } else if (chart instanceof CycleCurve cycle) {
      new CycleCurvePainter(cycle, setter).paint(width, height);
    } else if (chart instanceof Scatter points) {
      new ScatterPainter(points, setter).paint(width, height);
    } else {
      throw new AssertionError("no painter for " + chart.kind());
    }
  }
}
