package org.drysill.report.pdf.pack;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.drysill.report.pdf.deflate.Deflation;

/**
 * Where each object stands, as a cross-reference stream (ISO 32000-1, 7.5.8). Rows tell what
 * differs from the row before: objects that follow each other in an object stream differ by one.
 */
final class CrossReferences {
  private static final int AT_OFFSET = 1;
  private static final int WITHIN_STREAM = 2;
  private static final int[] WIDTHS = {1, 4, 2};
  private static final int ROW = 7;

  /** The filter of the rows: each byte less the one above. */
  private static final int UP = 2;

  private static final int PNG_UP = 12;

  private final List<int[]> rows = new ArrayList<>(List.of(new int[] {0, 0, 0xffff}));

  /** An object begins at an offset. */
  void at(int number, int offset) {
    set(number, new int[] {AT_OFFSET, offset, 0});
  }

  /** An object is that of an index in an object stream. */
  void within(int number, int stream, int index) {
    set(number, new int[] {WITHIN_STREAM, stream, index});
  }

  private void set(int number, int[] row) {
    while (rows.size() <= number) {
      rows.add(new int[] {0, 0, 0xffff});
    }
    rows.set(number, row);
  }

  COSDictionary dictionary() {
    COSDictionary parameters = new COSDictionary();
    parameters.setInt(COSName.PREDICTOR, PNG_UP);
    parameters.setInt(COSName.COLUMNS, ROW);
    parameters.setDirect(true);
    COSDictionary dictionary = new COSDictionary();
    dictionary.setItem(COSName.TYPE, COSName.XREF);
    dictionary.setInt(COSName.SIZE, rows.size());
    dictionary.setItem(COSName.W, PackedFile.integers(WIDTHS));
    dictionary.setItem(COSName.FILTER, COSName.FLATE_DECODE);
    dictionary.setItem(COSName.DECODE_PARMS, parameters);
    return dictionary;
  }

  byte[] packed() {
    byte[] table = new byte[rows.size() * (ROW + 1)];
    byte[] above = new byte[ROW];
    int at = 0;
    for (int[] row : rows) {
      byte[] now = bytes(row);
      table[at++] = UP;
      for (int i = 0; i < ROW; i++) {
        table[at++] = (byte) (now[i] - above[i]);
      }
      above = now;
    }
    return Deflation.of(table);
  }

  private static byte[] bytes(int[] row) {
    byte[] bytes = new byte[ROW];
    int at = 0;
    for (int field = 0; field < WIDTHS.length; field++) {
      for (int shift = 8 * (WIDTHS[field] - 1); shift >= 0; shift -= 8) {
        bytes[at++] = (byte) (row[field] >>> shift);
      }
    }
    return bytes;
  }
}
