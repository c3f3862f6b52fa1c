package org.drysill.report.chart;

import java.util.List;
import java.util.Optional;

/**
 * Lines over the twelve months, labelled at their ends, and the area hatched where one of them lies
 * below another.
 *
 * @param text the words around the chart
 * @param axis the upright axis
 * @param months the twelve letters under the horizontal axis, in the order of the values
 * @param lines the lines
 * @param below the area to be hatched
 */
public record MonthLines(
    ChartText text, Axis axis, List<String> months, List<Line> lines, Optional<Below> below)
    implements ChartSpec {
  /** The letters of a year that begins in January. */
  public static final List<String> JANUARY_FIRST =
      List.of("J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D");

  /** The letters of a year that begins in July, so that the winter stays whole. */
  public static final List<String> JULY_FIRST =
      List.of("J", "A", "S", "O", "N", "D", "J", "F", "M", "A", "M", "J");

  /** Copies the lists and refuses a line that does not have a value for every month. */
  public MonthLines {
    months = List.copyOf(months);
    lines = List.copyOf(lines);
    for (Line line : lines) {
      if (line.values().size() != months.size()) {
        throw new IllegalArgumentException(
            line.label() + " has " + line.values().size() + " values");
      }
    }
  }

  /** How a line is drawn; each can be told from the others in black and white. */
  public enum Style {
    /** Ink, solid: what the chart is about. */
    MAIN,
    /** The colour of data, solid and thicker: what the main line is held against. */
    LIMIT,
    /** Grey, dotted. */
    QUIET,
    /** Grey, dashed. */
    DASHED
  }

  /**
   * One line.
   *
   * @param label its words, at its end
   * @param values one value a month, in the unit of the axis
   * @param style how it is drawn
   */
  public record Line(String label, List<Double> values, Style style) {
    /** Copies the list. */
    public Line {
      values = List.copyOf(values);
    }
  }

  /**
   * The area to be hatched: where one line lies below the other.
   *
   * @param lower the index of the line that must not lie below
   * @param upper the index of the other line
   * @param label the words in or beside the area, such as "wet"
   */
  public record Below(int lower, int upper, String label) {}

  @Override
  public String kind() {
    return "month-lines";
  }

  @Override
  public double heightMm() {
    return 52;
  }
}
