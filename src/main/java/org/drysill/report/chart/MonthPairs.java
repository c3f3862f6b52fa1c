package org.drysill.report.chart;

import java.util.List;

/**
 * Counts by month before and after something: a panel for each kind of count, two bars a month with
 * the count above each.
 *
 * @param text the words around the chart
 * @param before what the first bars show, in a word or two
 * @param after what the second bars show
 * @param months the letters of the months
 * @param panels the kinds of count from top to bottom
 */
public record MonthPairs(
    ChartText text, String before, String after, List<String> months, List<Panel> panels)
    implements ChartSpec {
  /** Copies the lists. */
  public MonthPairs {
    months = List.copyOf(months);
    panels = List.copyOf(panels);
  }

  /**
   * One kind of count.
   *
   * @param label what is counted
   * @param before the counts before, one for each month
   * @param after the counts after
   */
  public record Panel(String label, List<Integer> before, List<Integer> after) {
    /** Copies the lists. */
    public Panel {
      before = List.copyOf(before);
      after = List.copyOf(after);
    }

    int most() {
      return Math.max(
          before.stream().mapToInt(Integer::intValue).max().orElse(0),
          after.stream().mapToInt(Integer::intValue).max().orElse(0));
    }
  }

  @Override
  public String kind() {
    return "month-pairs";
  }

  @Override
  public double heightMm() {
    return 4 + 29 * panels.size();
  }
}
