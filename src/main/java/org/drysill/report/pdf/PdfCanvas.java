package org.drysill.report.pdf;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Graphics2D;
import java.text.AttributedString;
import org.drysill.report.chart.Canvas;
import org.drysill.report.chart.Ink;
import org.drysill.report.font.Face;
import org.drysill.report.font.VisualOrder;

/** A canvas on a PDF page; text is set in the document's own embedded fonts. */
final class PdfCanvas implements Canvas {
  private final PdfBoxGraphics2D graphics;

  PdfCanvas(PdfBoxGraphics2D graphics, EmbeddedFonts fonts) {
    this.graphics = graphics;
    graphics.setFontTextDrawer(new TextDrawer(fonts));
  }

  @Override
  public Graphics2D graphics() {
    return graphics;
  }

  @Override
  public void text(String text, double x, double y, Face face, double size, Ink ink) {
    String line = VisualOrder.of(text);
    AttributedString attributed = new AttributedString(line);
    attributed.addAttribute(TextDrawer.LINE, new TextDrawer.Line(line, face, (float) size));
    graphics.setColor(ink.color());
    graphics.drawString(attributed.getIterator(), (float) x, (float) y);
  }
}
