package org.drysill.report.chart;

import org.drysill.report.font.Fonts;

/** A chart as an SVG element for an HTML page: shapes as paths, text as text. */
public final class Svg {
  private Svg() {}

  /**
   * Writes the element.
   *
   * @param width in CSS pixels, as the view box; the page may scale it
   * @param height in CSS pixels
   */
  public static String of(ChartSpec chart, Fonts fonts, double width, double height) {
    SvgCanvas canvas = new SvgCanvas();
    ChartPainter.paint(chart, canvas, fonts, width, height);
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"chart\" role=\"img\" viewBox=\"0 0 "
        + SvgGraphics.number(width)
        + " "
        + SvgGraphics.number(height)
        + "\" aria-label=\""
        + escaped(chart.text().alt())
        + "\">\n"
        + canvas.parts()
        + "</svg>";
  }

  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
