package org.drysill.report.chart;

/**
 * What a chart shows. Every number is already rounded and worded by whoever made the spec; a chart
 * only finds places on paper.
 */
public sealed interface ChartSpec
    permits RangeBars,
        RuleBars,
        MonthLines,
        SourceBars,
        CostEffect,
        CostStack,
        MonthPairs,
        Tornado,
        AirSketch,
        WallLines,
        ReadAndModelled,
        TimeTrace,
        CycleCurve,
        Scatter {
  /** The words around the chart. */
  ChartText text();

  /**
   * The kind, as it stands in the {@code type} of the page's object element: {@code chart/kind}.
   */
  String kind();

  /** The height in millimetres that shows the chart well at a usual width. */
  double heightMm();
}
