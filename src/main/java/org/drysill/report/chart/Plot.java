package org.drysill.report.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * The data area of a chart: XChart draws the data, and only the data, into a rectangle whose edges
 * are the ends of the axes. Labels and ticks are set around it by the same mapping.
 */
final class Plot {
  private final Axis horizontal;
  private final Axis upright;
  private final double left;
  private final double top;
  private final int width;
  private final int height;
  private final XYChart chart;

  Plot(Axis horizontal, Axis upright, double left, double top, double width, double height) {
    this.horizontal = horizontal;
    this.upright = upright;
    this.left = left;
    this.top = top;
    this.width = (int) width;
    this.height = (int) height;
    this.chart = new XYChart(this.width, this.height, Styler.ChartTheme.XChart);
    strip(chart.getStyler());
    chart.getStyler().setXAxisMin(horizontal.min()).setXAxisMax(horizontal.max());
    chart.getStyler().setYAxisMin(upright.min()).setYAxisMax(upright.max());
  }

  double left() {
    return left;
  }

  double right() {
    return left + width;
  }

  double top() {
    return top;
  }

  double bottom() {
    return top + height;
  }

  double x(double value) {
    return left + width * horizontal.share(value);
  }

  double y(double value) {
    return top + height * (1 - upright.share(value));
  }

  /** Adds a line through points in the units of the axes. */
  void line(double[] xs, double[] ys, Ink ink, BasicStroke stroke) {
    XYSeries series = chart.addSeries("s" + chart.getSeriesMap().size(), xs, ys);
    series.setMarker(SeriesMarkers.NONE);
    series.setLineColor(ink.color());
    series.setLineStyle(stroke);
  }

  /** Adds a bar from one value to another at a height of the upright axis. */
  void bar(double from, double to, double at, Ink ink, double thickness) {
    line(new double[] {from, to}, new double[] {at, at}, ink, Strokes.butt(thickness));
  }

  /** Draws what was added. */
  void paint(Graphics2D graphics) {
    if (chart.getSeriesMap().isEmpty()) {
      return;
    }
    AffineTransform before = graphics.getTransform();
    graphics.translate(left, top);
    chart.paint(graphics, width, height);
    graphics.setTransform(before);
  }

  private static void strip(XYStyler styler) {
    styler.setLegendVisible(false).setChartTitleVisible(false);
    styler.setChartPadding(0).setPlotContentSize(1.0);
    styler.setPlotBorderVisible(false);
    // No paint at all: the page shows through.
    styler.setChartBackgroundColor(null).setPlotBackgroundColor(null);
    styler.setPlotMargin(0);
    styler.setPlotGridLinesVisible(false).setPlotTicksMarksVisible(false);
    styler.setAxisTicksVisible(false).setAxisTitlesVisible(false);
    // XChart looks for round ticks even where none is shown, and measures their labels with fonts
    // of the system. A spacing wider than any plot keeps it from both.
    styler.setXAxisTickMarkSpacingHint(Integer.MAX_VALUE);
    styler.setYAxisTickMarkSpacingHint(Integer.MAX_VALUE);
  }
}
