package org.drysill.report.pdf;

import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.drysill.report.font.Face;
import org.drysill.report.font.Fonts;

/** The fonts of one document: each embedded once, as the subset that text and charts use. */
final class EmbeddedFonts {
  private final PDDocument document;
  private final Fonts fonts;
  private final Map<Face, PDFont> embedded = new EnumMap<>(Face.class);

  EmbeddedFonts(PDDocument document, Fonts fonts) {
    this.document = document;
    this.fonts = fonts;
  }

  Fonts fonts() {
    return fonts;
  }

  PDFont font(Face face) {
    return embedded.computeIfAbsent(face, this::embed);
  }

  /** Hands the font to the layout only when a page uses it. */
  PDFontSupplier supplier(Face face) {
    return new PDFontSupplier(null) {
      @Override
      public PDFont supply() {
        return font(face);
      }
    };
  }

  /** Takes out what no page shows; nothing is to be set in these fonts any more. */
  void subset() throws IOException {
    for (PDFont font : embedded.values()) {
      font.subset();
    }
  }

  private PDFont embed(Face face) {
    try {
      return PDType0Font.load(document, fonts.file(face), true);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
