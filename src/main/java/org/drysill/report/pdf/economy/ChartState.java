package org.drysill.report.pdf.economy;

/**
 * What holds where something is painted.
 *
 * @param place where what is painted comes to on the chart
 * @param fill the colour of areas and text, three numbers
 * @param stroke the colour of lines, three numbers
 * @param line how lines are drawn: the operators that set it
 * @param font the font of text with its size
 * @param clips how many clips hold
 */
record ChartState(Place place, String fill, String stroke, Line line, String font, int clips) {
  static final ChartState INITIAL =
      new ChartState(Place.NONE, "0 0 0", "0 0 0", Line.INITIAL, "", 0);

  /** Nothing that is known to be set: a chart begins with what the page has left. */
  static final ChartState UNKNOWN =
      new ChartState(Place.NONE, "", "", new Line("", "", "", "", ""), "", 0);

  /**
   * How lines are drawn.
   *
   * @param width their width
   * @param cap the shape of their ends
   * @param join the shape of their corners
   * @param miter how far a corner may reach out
   * @param dash the lengths of dashes and gaps, and where these begin
   */
  record Line(String width, String cap, String join, String miter, String dash) {
    static final Line INITIAL = new Line("1", "0", "0", "10", "[] 0");
  }

  ChartState moved(Place by) {
    return new ChartState(by.within(place), fill, stroke, line, font, clips);
  }

  ChartState clipped() {
    return new ChartState(place, fill, stroke, line, font, clips + 1);
  }

  ChartState with(String operator, String operands) {
    return switch (operator) {
      case "sc", "rg" -> new ChartState(place, operands, stroke, line, font, clips);
      case "SC", "RG" -> new ChartState(place, fill, operands, line, font, clips);
      case "Tf" -> new ChartState(place, fill, stroke, line, operands, clips);
      default -> new ChartState(place, fill, stroke, with(line, operator, operands), font, clips);
    };
  }

  private static Line with(Line line, String operator, String operands) {
    return switch (operator) {
      case "w" -> new Line(operands, line.cap, line.join, line.miter, line.dash);
      case "J" -> new Line(line.width, operands, line.join, line.miter, line.dash);
      case "j" -> new Line(line.width, line.cap, operands, line.miter, line.dash);
      case "M" -> new Line(line.width, line.cap, line.join, operands, line.dash);
      case "d" -> new Line(line.width, line.cap, line.join, line.miter, operands);
      default -> throw new ChartEconomy.Unknown(operator);
    };
  }
}
