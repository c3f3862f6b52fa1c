package org.drysill.report.pdf.economy;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.GeneralPath;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.drysill.report.font.Face;
import org.drysill.report.font.Fonts;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The report's own fonts, whole, with and without instructions. */
class UnhintedTest {
  private static byte[] file(Face face) throws IOException {
    try (InputStream in = new Fonts().file(face).getOriginalData()) {
      return in.readAllBytes();
    }
  }

  private static TrueTypeFont parsed(byte[] font) throws IOException {
    return new TTFParser().parse(new RandomAccessReadBuffer(font));
  }

  @ParameterizedTest
  @EnumSource(Face.class)
  void every_outline_stays(Face face) throws IOException {
    byte[] hinted = file(face);
    byte[] unhinted = Unhinted.of(hinted);
    assertThat(unhinted.length).isLessThan(hinted.length);
    // OpenType: all words of a font together.
    assertThat(ByteBuffer.wrap(unhinted).asIntBuffer())
        .satisfies(
            words -> {
              int sum = 0;
              while (words.hasRemaining()) {
                sum += words.get();
              }
              assertThat(sum).isEqualTo(0xB1B0AFBA);
            });
    try (TrueTypeFont before = parsed(hinted);
        TrueTypeFont after = parsed(unhinted)) {
      assertThat(after.getTableMap()).doesNotContainKeys("cvt ", "fpgm", "prep", "gasp");
      assertThat(after.getNumberOfGlyphs()).isEqualTo(before.getNumberOfGlyphs());
      for (int glyph = 0; glyph < before.getNumberOfGlyphs(); glyph++) {
        GlyphData was = before.getGlyph().getGlyph(glyph);
        GlyphData is = after.getGlyph().getGlyph(glyph);
        assertThat(is == null).isEqualTo(was == null);
        if (was != null) {
          assertThat(same(was.getPath(), is.getPath())).isTrue();
        }
      }
    }
  }

  private static boolean same(GeneralPath one, GeneralPath other) {
    var a = one.getPathIterator(null);
    var b = other.getPathIterator(null);
    double[] p = new double[6];
    double[] q = new double[6];
    while (!a.isDone() && !b.isDone()) {
      if (a.currentSegment(p) != b.currentSegment(q) || !java.util.Arrays.equals(p, q)) {
        return false;
      }
      a.next();
      b.next();
    }
    return a.isDone() && b.isDone();
  }
}
