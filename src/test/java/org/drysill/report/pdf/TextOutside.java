package org.drysill.report.pdf;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Finds letters that stand outside the page, or nearer than 10 mm to its edge. */
public final class TextOutside extends PDFTextStripper {
  private static final double EDGE = 10 * 72 / 25.4;
  private final List<String> outside = new ArrayList<>();

  private TextOutside() {}

  /** The letters with their pages and places. */
  public static List<String> of(PDDocument document) throws IOException {
    TextOutside stripper = new TextOutside();
    stripper.writeText(document, Writer.nullWriter());
    return stripper.outside;
  }

  @Override
  protected void processTextPosition(TextPosition position) {
    PDRectangle page = getCurrentPage().getMediaBox();
    double left = position.getXDirAdj();
    double right = left + position.getWidthDirAdj();
    double y = position.getYDirAdj();
    if (left < EDGE || right > page.getWidth() - EDGE || y < EDGE || y > page.getHeight() - EDGE) {
      outside.add(getCurrentPageNo() + ": " + position.getUnicode() + " at " + left + ", " + y);
    }
    super.processTextPosition(position);
  }
}
