package org.drysill.report.pdf.economy;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The codes of all fonts of a document, which are subset already. */
final class FontCodes {
  private final PDDocument document;
  private final Map<COSDictionary, GlyphCodes> fonts = new LinkedHashMap<>();

  FontCodes(PDDocument document) {
    this.document = document;
  }

  /** The codes of a font; empty for one whose codes are not numbers of glyphs. */
  Optional<GlyphCodes> of(COSDictionary font) {
    boolean isNumbered = COSName.IDENTITY_H.equals(font.getDictionaryObject(COSName.ENCODING));
    return isNumbered
        ? Optional.of(fonts.computeIfAbsent(font, FontCodes::made))
        : Optional.empty();
  }

  private static GlyphCodes made(COSDictionary font) {
    String map = font.getCOSStream(COSName.TO_UNICODE).toTextString();
    return new GlyphCodes(GlyphTexts.of(map)::of, GlyphWidths.of(descendant(font)));
  }

  private static COSDictionary descendant(COSDictionary font) {
    return (COSDictionary) font.getCOSArray(COSName.DESCENDANT_FONTS).getObject(0);
  }

  /** Tells each font which code is which glyph and which text. */
  void write() throws IOException {
    for (Map.Entry<COSDictionary, GlyphCodes> entry : fonts.entrySet()) {
      CodeMaps maps = new CodeMaps(entry.getValue());
      COSStream encoding = stream(maps.glyphs());
      encoding.setItem(COSName.TYPE, COSName.getPDFName("CMap"));
      encoding.setItem(COSName.getPDFName("CMapName"), COSName.getPDFName(CodeMaps.NAME));
      encoding.setItem(COSName.CIDSYSTEMINFO, systemInfo());
      entry.getKey().setItem(COSName.ENCODING, encoding);
      entry.getKey().setItem(COSName.TO_UNICODE, stream(maps.texts()));
      unhint(descendant(entry.getKey()).getCOSDictionary(COSName.FONT_DESC));
    }
  }

  private static void unhint(COSDictionary descriptor) throws IOException {
    COSStream file = descriptor.getCOSStream(COSName.FONT_FILE2);
    byte[] font;
    try (InputStream in = file.createInputStream()) {
      font = Unhinted.of(in.readAllBytes());
    }
    try (OutputStream out = file.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(font);
    }
    file.setInt(COSName.LENGTH1, font.length);
  }

  private static COSDictionary systemInfo() {
    COSDictionary info = new COSDictionary();
    info.setString(COSName.REGISTRY, "Adobe");
    info.setString(COSName.ORDERING, "Identity");
    info.setInt(COSName.SUPPLEMENT, 0);
    info.setDirect(true);
    return info;
  }

  private COSStream stream(String text) throws IOException {
    COSStream stream = document.getDocument().createCOSStream();
    try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(text.getBytes(StandardCharsets.US_ASCII));
    }
    return stream;
  }
}
