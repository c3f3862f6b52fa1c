package org.drysill.report.chart;

import java.util.List;

/**
 * What a logger recorded over days: one panel for each quantity, in it the range of each short
 * stretch as a filled band, limits as labelled lines; under them marks of what happened.
 *
 * @param text the words around the chart
 * @param time the horizontal axis
 * @param panels from top to bottom
 * @param marks rows of marks under the panels
 */
public record TimeTrace(ChartText text, Axis time, List<Panel> panels, List<Marks> marks)
    implements ChartSpec {
  /** Copies the lists. */
  public TimeTrace {
    panels = List.copyOf(panels);
    marks = List.copyOf(marks);
  }

  /**
   * One quantity.
   *
   * @param label its name and unit, in the panel
   * @param axis the upright axis
   * @param bands from left to right; where one ends and the next does not begin, the log is silent
   * @param limits lines across the panel
   */
  public record Panel(String label, Axis axis, List<Band> bands, List<Limit> limits) {
    /** Copies the lists. */
    public Panel {
      bands = List.copyOf(bands);
      limits = List.copyOf(limits);
    }
  }

  /**
   * The range of a quantity over a stretch of time.
   *
   * @param from start, on the axis of time
   * @param to end
   * @param low lowest value
   * @param high highest value
   */
  public record Band(double from, double to, double low, double high) {}

  /**
   * A line across a panel.
   *
   * @param at its value
   * @param label its words, at its right end
   */
  public record Limit(double at, String label) {}

  /**
   * What happened, and when.
   *
   * @param label what it is, at the right
   * @param at when, on the axis of time
   */
  public record Marks(String label, List<Double> at) {
    /** Copies the list. */
    public Marks {
      at = List.copyOf(at);
    }
  }

  @Override
  public String kind() {
    return "time-trace";
  }

  @Override
  public double heightMm() {
    return 8 + 19.5 * panels.size() + 3.6 * marks.size();
  }
}
