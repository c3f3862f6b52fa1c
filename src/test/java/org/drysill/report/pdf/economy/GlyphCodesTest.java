package org.drysill.report.pdf.economy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.fontbox.cmap.CMap;
import org.apache.fontbox.cmap.CMapParser;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;

/** Codes for glyphs; here the number of a glyph is 1000 less than that of its character. */
class GlyphCodesTest {
  private static final GlyphWidths WIDTHS = GlyphWidths.of(new COSDictionary());

  private final GlyphCodes codes =
      new GlyphCodes(glyph -> glyph == 9 ? null : Character.toString(glyph + 1000), WIDTHS);

  private static String glyphs(int... characters) {
    StringBuilder digits = new StringBuilder("<");
    for (int character : characters) {
      digits.append("%04X".formatted(character));
    }
    return digits.append("> Tj").toString();
  }

  @Test
  void letters_of_ascii_keep_their_code_but_for_marks_of_strings_and_the_space() {
    GlyphCodes plain = new GlyphCodes(Character::toString, WIDTHS);
    assertThat(plain.recoded(glyphs('A', 'z', '~'))).isEqualTo("(Az~) Tj");
    assertThat(plain.recoded(glyphs(' ', '(', ')', '\\')))
        .isEqualTo("(\u0080\u0081\u0082\u0083) Tj");
  }

  @Test
  void strings_in_brackets_are_read_like_digits() {
    GlyphCodes plain = new GlyphCodes(Character::toString, WIDTHS);
    assertThat(plain.recoded("[(\0A\0\\() -250 <0042>] TJ")).isEqualTo("[(A\u0080) -250 (B)] TJ");
  }

  /** 112 codes of one byte, then codes of two; every one is told back by the maps of the font. */
  @Test
  void every_glyph_is_told_by_the_maps_whatever_their_number() throws IOException {
    int[] many = new int[1200];
    for (int i = 0; i < many.length; i++) {
      many[i] = i;
    }
    String shown = codes.recoded(glyphs(many));
    CodeMaps maps = new CodeMaps(codes);
    CMap toGlyph = parsed(maps.glyphs());
    CMap toText = parsed(maps.texts());
    assertThat(codes.codes()).hasSize(many.length);
    assertThat(codes.codes().values()).doesNotHaveDuplicates();
    codes
        .codes()
        .forEach(
            (glyph, code) -> {
              byte[] bytes =
                  code > 0xff
                      ? new byte[] {(byte) (code >> 8), code.byteValue()}
                      : new byte[] {code.byteValue()};
              assertThat(toGlyph.toCID(bytes)).isEqualTo(glyph);
              assertThat(toText.toUnicode(bytes)).isEqualTo(codes.unicode(glyph));
            });
    assertThat(shown).startsWith("(").endsWith(") Tj").doesNotContain("\n", "\r");
  }

  /** As the library writes them; the last character counts along a range. */
  @Test
  void texts_of_glyphs_are_read_from_ranges() {
    GlyphTexts texts =
        GlyphTexts.of(
            """
            1 begincodespacerange
            <0000> <FFFF>
            endcodespacerange
            2 beginbfrange
            <0003> <0005> <0020>
            <0010> <0010> <00660069>
            endbfrange
            """);
    assertThat(texts.of(3) + texts.of(5)).isEqualTo(" \"");
    assertThat(texts.of(16)).isEqualTo("fi");
    assertThat(texts.of(6)).isNull();
  }

  private static CMap parsed(String map) throws IOException {
    return new CMapParser()
        .parse(new RandomAccessReadBuffer(map.getBytes(StandardCharsets.US_ASCII)));
  }

  @Test
  void widths_are_those_of_single_glyphs_of_spans_and_the_usual_one() {
    COSArray told = new COSArray();
    told.add(COSInteger.get(3));
    COSArray each = new COSArray();
    each.add(COSInteger.get(250));
    each.add(COSInteger.get(300));
    told.add(each);
    told.add(COSInteger.get(10));
    told.add(COSInteger.get(12));
    told.add(COSInteger.get(700));
    COSDictionary font = new COSDictionary();
    font.setItem(COSName.W, told);
    GlyphWidths widths = GlyphWidths.of(font);
    assertThat(widths.of(3) + widths.of(4)).isEqualTo(550);
    assertThat(widths.of(10) + widths.of(12)).isEqualTo(1400);
    assertThat(widths.of(13)).isEqualTo(1000);
    assertThat(new GlyphCodes(Character::toString, widths).width("<00030004000A> Tj"))
        .isEqualTo(1250);
  }
}
