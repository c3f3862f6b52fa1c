package org.drysill.report.pdf;

import de.rototor.pdfbox.graphics2d.IPdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.awt.FontMetrics;
import java.io.IOException;
import java.text.AttributedCharacterIterator;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import org.drysill.report.font.Face;
import org.drysill.report.font.Fonts;

/** Shows text with the document's fonts. No font of the system is ever asked for. */
final class TextDrawer implements IPdfBoxGraphics2DFontTextDrawer {
  /** What is to be shown; put on the whole of the text. */
  static final AttributedCharacterIterator.Attribute LINE = new LineAttribute();

  private final EmbeddedFonts fonts;

  TextDrawer(EmbeddedFonts fonts) {
    this.fonts = fonts;
  }

  record Line(String text, Face face, float size) {}

  private static final class LineAttribute extends AttributedCharacterIterator.Attribute {
    private static final long serialVersionUID = 1L;

    LineAttribute() {
      super("line");
    }
  }

  @Override
  public boolean canDrawText(AttributedCharacterIterator iterator, IFontTextDrawerEnv env) {
    return true;
  }

  @Override
  public void drawText(AttributedCharacterIterator iterator, IFontTextDrawerEnv env)
      throws IOException {
    Line line = (Line) iterator.getAttribute(LINE);
    PDPageContentStream stream = env.getContentStream();
    env.applyPaint(env.getPaint(), null);
    stream.beginText();
    // The canvas counts downwards, text upwards.
    stream.setTextMatrix(Matrix.getScaleInstance(1, -1));
    for (Fonts.Run run : fonts.fonts().runs(line.face(), line.text())) {
      stream.setFont(fonts.font(run.face()), line.size());
      stream.showText(run.text());
    }
    stream.endText();
  }

  @Override
  public FontMetrics getFontMetrics(Font font, IFontTextDrawerEnv env) {
    throw new UnsupportedOperationException("text is measured by the report's own fonts");
  }
}
