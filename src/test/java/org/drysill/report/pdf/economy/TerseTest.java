package org.drysill.report.pdf.economy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.junit.jupiter.api.Test;

/**
 * Contents without what they say again. Every glyph of the font F1 is half as wide as it is high.
 */
class TerseTest {
  private final GlyphCodes font = new GlyphCodes(Character::toString, halves());
  private final Terse terse =
      new Terse(name -> name.equals("F1") ? Optional.of(font) : Optional.empty());

  private static GlyphWidths halves() {
    COSDictionary descendant = new COSDictionary();
    descendant.setInt(COSName.DW, 500);
    return GlyphWidths.of(descendant);
  }

  private String rewritten(String lines) {
    return terse.rewritten(lines);
  }

  @Test
  void a_colour_is_set_before_a_path_that_has_it_and_not_again() {
    assertThat(
            rewritten(
                """
                1 0 0 rg
                0.10588 0.5 0.99999 rg
                0 0 1 1 re
                f
                q
                0.10588 0.5 1 rg
                0 0 2 2 re
                f
                0 0 0 rg
                0 0 3 3 re
                f
                Q
                0 0 4 4 re
                f
                """))
        .isEqualTo(
            """
            .106 .5 1 rg
            0 0 1 1 re
            f
            q
            0 0 2 2 re
            f
            0 0 0 rg
            0 0 3 3 re
            f
            Q
            0 0 4 4 re
            f
            """);
  }

  @Test
  void how_lines_are_drawn_is_told_where_one_is_drawn() {
    assertThat(rewritten("0.0375 w\n2 J\n[] 0 d\n0 0 m\n1.23456 0 l\nS\n0 0 m\n2 0 l\nS\n"))
        .isEqualTo(".038 w\n2 J\n[] 0 d\n0 0 m\n1.235 0 l\nS\n0 0 m\n2 0 l\nS\n");
    assertThat(new Terse(name -> Optional.empty()).rewritten("2 J\n0 0 1 1 re\nf\n"))
        .isEqualTo("0 0 1 1 re\nf\n");
  }

  /** Each glyph moves on by 5: the second text begins where the first ends, the third does not. */
  @Test
  void text_that_goes_on_where_the_last_ended_is_one() {
    assertThat(
            rewritten(
                """
                BT
                /F1 10 Tf
                20 70 Td
                <00410042> Tj
                10.05 0 Td
                <00280043> Tj
                20 0 Td
                <0044> Tj
                -20 -12 Td
                <0045> Tj
                ET
                """))
        .isEqualTo(
            """
            BT
            /F1 10 Tf
            20 70 Td
            (AB\u0080C) Tj
            30.05 0 Td
            (D) Tj
            -20 -12 Td
            (E) Tj
            ET
            """);
  }

  @Test
  void text_goes_on_in_another_colour_without_a_new_place() {
    assertThat(
            rewritten(
                """
                BT
                /F1 10 Tf
                1 2 Td
                <0041> Tj
                1 0 0 rg
                5 0 Td
                <0042> Tj
                ET
                """))
        .isEqualTo("BT\n/F1 10 Tf\n1 2 Td\n(A) Tj\n1 0 0 rg\n(B) Tj\nET\n");
  }

  @Test
  void text_of_a_turned_line_or_with_distances_of_its_own_keeps_its_place() {
    assertThat(
            rewritten(
                """
                BT
                /F1 10 Tf
                0 1 -1 0 5 5 Tm
                <0041> Tj
                [<0042> -20 <0043>] TJ
                5 0 Td
                <0044> Tj
                ET
                """))
        .isEqualTo(
            """
            BT
            0 1 -1 0 5 5 Tm
            /F1 10 Tf
            (A) Tj
            [(B) -20 (C)] TJ
            5 0 Td
            (D) Tj
            ET
            """);
  }

  @Test
  void marks_are_counted_anew_without_those_of_nothing() {
    assertThat(
            rewritten(
                """
                /P <</MCID 4>> BDC
                EMC
                /P <</MCID 7>> BDC
                /Form1 Do
                EMC
                /Artifact BMC
                0 0 1 1 re
                f
                EMC
                """))
        .isEqualTo("/P<</MCID 0>>BDC\n/Form1 Do\nEMC\n/Artifact BMC\n0 0 1 1 re\nf\nEMC\n");
    assertThat(terse.numbers()).containsExactly(java.util.Map.entry(7, 0));
  }

  @Test
  void a_font_whose_codes_are_not_numbers_of_glyphs_keeps_them() {
    assertThat(rewritten("BT\n/F9 10 Tf\n1 2 Td\n(plain) Tj\nET\n"))
        .isEqualTo("BT\n/F9 10 Tf\n1 2 Td\n(plain) Tj\nET\n");
  }
}
