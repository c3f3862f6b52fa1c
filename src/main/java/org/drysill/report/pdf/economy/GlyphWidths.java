package org.drysill.report.pdf.economy;

import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;

/** The widths by which a font moves on, in thousandths of its size (ISO 32000-1, 9.7.4.3). */
final class GlyphWidths {
  private static final int USUAL = 1000;

  private final Map<Integer, Double> widths = new HashMap<>();
  private final double otherwise;

  private GlyphWidths(double otherwise) {
    this.otherwise = otherwise;
  }

  /** The widths that a font tells. */
  static GlyphWidths of(COSDictionary font) {
    GlyphWidths widths =
        new GlyphWidths(
            font.getDictionaryObject(COSName.DW) instanceof COSNumber width
                ? width.floatValue()
                : USUAL);
    COSArray told = font.getCOSArray(COSName.W);
    int at = 0;
    while (told != null && at + 1 < told.size()) {
      at = widths.take(told, at);
    }
    return widths;
  }

  /** Takes the widths of glyphs from one on, or that of all from one to another. */
  private int take(COSArray told, int at) {
    int first = ((COSNumber) told.getObject(at)).intValue();
    COSBase next = told.getObject(at + 1);
    if (next instanceof COSArray each) {
      for (int i = 0; i < each.size(); i++) {
        widths.put(first + i, number(each, i));
      }
      return at + 2;
    }
    for (int glyph = first; glyph <= ((COSNumber) next).intValue(); glyph++) {
      widths.put(glyph, number(told, at + 2));
    }
    return at + 3;
  }

  private static double number(COSArray array, int at) {
    return ((COSNumber) array.getObject(at)).floatValue();
  }

  double of(int glyph) {
    return widths.getOrDefault(glyph, otherwise);
  }
}
