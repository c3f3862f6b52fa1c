package org.drysill.report.chart;

import java.awt.Graphics2D;
import org.drysill.report.font.Face;

/**
 * Where a chart is drawn. Unit: 1/96 inch, x to the right and y downwards. Shapes go through {@link
 * #graphics()}; text is set as text, never as outlines.
 */
public interface Canvas {
  /** For strokes and fills. */
  Graphics2D graphics();

  /**
   * Sets one line of text.
   *
   * @param text what the fonts can print
   * @param x of its left end
   * @param y of its baseline
   * @param face the font
   * @param size the font size
   * @param ink the colour
   */
  void text(String text, double x, double y, Face face, double size, Ink ink);
}
