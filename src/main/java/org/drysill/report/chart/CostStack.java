package org.drysill.report.chart;

import java.util.List;

/**
 * Sums and what they are made of: one horizontal bar for each sum, its parts one after the other
 * with a pattern each, savings at the left of zero. Every part is named and counted above its bar.
 *
 * @param text the words around the chart
 * @param axis the common axis of all bars
 * @param bars the sums from top to bottom
 */
public record CostStack(ChartText text, Axis axis, List<Bar> bars) implements ChartSpec {
  /** Copies the list. */
  public CostStack {
    bars = List.copyOf(bars);
  }

  /** The patterns of parts, told apart without any colour. */
  public enum Pattern {
    /** Filled with the colour of data. */
    DATA,
    /** Stripes that rise to the right. */
    RISING,
    /** Light ground. */
    GROUND,
    /** Filled with ink. */
    INK,
    /** Stripes that fall to the right. */
    FALLING,
    /** Left open. */
    OPEN
  }

  /**
   * One sum.
   *
   * @param label its name, at the left
   * @param total the sum in words, at the end of its bar
   * @param parts its parts, those at the right of zero from zero on, likewise those at its left
   */
  public record Bar(String label, String total, List<Part> parts) {
    /** Copies the list. */
    public Bar {
      parts = List.copyOf(parts);
    }
  }

  /**
   * One part of a sum.
   *
   * @param label its name and value in words
   * @param value in the unit of the axis; negative for what is taken off
   * @param pattern how it is filled
   */
  public record Part(String label, double value, Pattern pattern) {}

  @Override
  public String kind() {
    return "cost-stack";
  }

  @Override
  public double heightMm() {
    return 6 + 12.5 * bars.size();
  }
}
