package org.drysill.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The sample document, looked at from outside. */
class PdfRendererTest {
  private static byte[] pdf;
  private static String text;

  @BeforeAll
  static void render() throws IOException {
    pdf = Sample.pdf();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      text = new PDFTextStripper().getText(document);
    }
  }

  @Test
  void the_words_of_charts_are_text_that_can_be_found() {
    assertThat(text)
        .contains("Bathroom extract on the first floor", "asked 31", "provided 20 (15–26)")
        .contains("window, lower edge", "water on the pane", "3 Secondary glazing");
  }

  @Test
  void hostile_words_are_printed_as_they_were_written() {
    assertThat(text)
        .contains("<script>alert(1)</script> & \"quotes\" 'apostrophes'")
        .contains("${title} #{1} <#list x as y> ${7*7} [=1]")
        .contains("→ ✓ ⚠ ✗ ≤ ≥ ² ³", "Zażółć gęślą jaźń", "Ελληνικά");
    assertThat(text.replaceAll("\\s", "")).contains(Sample.LONGEST);
  }

  @Test
  void a_character_that_no_font_has_is_printed_as_its_code_point_and_noted() {
    assertThat(text)
        .contains("Spore [U+1F9A0] and bell [U+0007] end")
        .contains("U+0007 (bel), U+1F9A0 (microbe)");
  }

  @Test
  void letters_written_from_right_to_left_stand_in_their_order() {
    assertThat(text).contains("שלום עולם");
  }

  @Test
  void the_same_input_gives_the_same_bytes_whatever_the_locale_and_the_time_zone() {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
      assertThat(Sample.pdf()).isEqualTo(pdf);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void another_input_gives_another_identifier() throws IOException {
    byte[] other =
        new PdfRenderer().render(Sample.page(), Sample.charts(), Sample.metadata(), List.of());
    assertThat(identifier(other)).isNotEqualTo(identifier(pdf));
  }

  @Test
  void the_files_inside_are_associated_with_the_document() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      Map<String, PDComplexFileSpecification> files =
          document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
      assertThat(files).containsOnlyKeys("survey.yaml", "results.json");
      assertThat(files.get("survey.yaml").getEmbeddedFile().toByteArray())
          .asString()
          .isEqualTo("drysill: 1\n");
      COSArray associated =
          document.getDocumentCatalog().getCOSObject().getCOSArray(COSName.getPDFName("AF"));
      assertThat(associated.toList()).hasSize(2);
      assertThat(((COSDictionary) associated.getObject(0)).getNameAsString("AFRelationship"))
          .isEqualTo("Source");
      assertThat(((COSDictionary) associated.getObject(1)).getNameAsString("AFRelationship"))
          .isEqualTo("Data");
    }
  }

  @Test
  void contents_bookmarks_and_page_numbers_agree_with_the_pages() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getDocumentCatalog().getDocumentOutline().children()).hasSize(5);
      PDFTextStripper stripper = new PDFTextStripper();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        assertThat(stripper.getText(document))
            .contains(page + " of " + document.getNumberOfPages());
      }
    }
  }

  @Test
  void nothing_stands_outside_its_page_on_either_paper() throws IOException {
    byte[] letter =
        new PdfRenderer()
            .render(Sample.page("letter"), Sample.charts(), Sample.metadata(), List.of());
    for (byte[] file : List.of(pdf, letter)) {
      try (PDDocument document = Loader.loadPDF(file)) {
        assertThat(TextOutside.of(document)).isEmpty();
      }
    }
  }

  private static String identifier(byte[] file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file)) {
      return document.getDocument().getDocumentID().toString();
    }
  }
}
