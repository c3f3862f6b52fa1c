package org.drysill.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.drysill.report.font.Face;
import org.drysill.report.font.Fonts;

/** A canvas that notes where words stand; shapes go nowhere. */
final class Noted implements Canvas {
  private static final Fonts FONTS = new Fonts();

  private final Graphics2D graphics = new SvgGraphics(new StringBuilder());
  private final List<Rectangle2D> boxes = new ArrayList<>();
  private final List<String> words = new ArrayList<>();
  private final Rectangle2D page;

  private Noted(double width, double height) {
    this.page = new Rectangle2D.Double(-0.5, -0.5, width + 1, height + 1);
  }

  /** A chart in its own height. */
  static Noted painted(ChartSpec chart, double width) {
    double height = chart.heightMm() / 25.4 * 96;
    Noted canvas = new Noted(width, height);
    ChartPainter.paint(chart, canvas, FONTS, width, height);
    return canvas;
  }

  /** The words in the order in which they were set. */
  List<String> words() {
    return words;
  }

  /** Every word stands on the canvas, and none on another. */
  void assertThatNoWordsOverlap() {
    for (int i = 0; i < boxes.size(); i++) {
      assertThat(page.contains(boxes.get(i))).as(words.get(i)).isTrue();
      for (int j = 0; j < i; j++) {
        assertThat(boxes.get(i).intersects(boxes.get(j)))
            .as(words.get(i) + " and " + words.get(j))
            .isFalse();
      }
    }
  }

  @Override
  public Graphics2D graphics() {
    return graphics;
  }

  @Override
  public void text(String text, double x, double y, Face face, double size, Ink ink) {
    double width = FONTS.width(face, text, size);
    boxes.add(new Rectangle2D.Double(x, y - 0.75 * size, width, 0.9 * size));
    words.add(text);
  }
}
