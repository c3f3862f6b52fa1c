package org.drysill.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.drysill.report.pdf.PdfMetadata;
import org.drysill.report.pdf.PdfRenderer;
import org.junit.jupiter.api.Test;

/** The proof-reader finds what it is there to find. */
class ProofReaderTest {
  private static final String START =
      "<html lang=\"en\"><head><title>A page</title><style>@page { size: 210mm 297mm; margin: 24mm"
          + " 16mm 20mm 22mm; } body { font-family: Body; font-size: 10pt; margin: 0; }"
          + "</style></head><body><div role=\"main\">";
  private static final String TALL = "<p style=\"height: 236mm\">Text</p>";
  private static final String NEXT = "<p style=\"page-break-before: always\">The next page</p>";

  private static PrintedReport printed(String body) {
    PdfMetadata metadata =
        new PdfMetadata("A page", "", "A page", List.of(), "en", "Drysill", LocalDate.EPOCH);
    return PrintedReport.of(
        new PdfRenderer()
            .render(START + body + "</div></body></html>", Map.of(), metadata, List.of()));
  }

  private static Sheet first(String body) {
    return printed(body).sheets().get(0);
  }

  @Test
  void text_on_text() {
    assertThat(first("<p>Clean text</p>").overlaps()).isEmpty();
    assertThat(first("<p>Some text</p><p style=\"margin-top: -8mm\">Other text</p>").overlaps())
        .isNotEmpty();
  }

  @Test
  void text_that_is_cut_or_leaves_the_page() {
    assertThat(ProofReader.outside(first("<p>Clean text</p>"))).isEmpty();
    assertThat(ProofReader.outside(first("<p style=\"margin-left: 168mm\">Unbreakable</p>")))
        .isNotEmpty();
    assertThat(
            ProofReader.outside(
                first("<p style=\"width: 10mm; overflow: hidden\">Unbreakablewords</p>")))
        .isNotEmpty();
  }

  @Test
  void type_too_small_to_be_copied_smaller() {
    assertThat(ProofReader.small(first("<p style=\"font-size: 7.8pt\">Small print</p>"))).isEmpty();
    assertThat(ProofReader.small(first("<p>A<sub style=\"font-size: 75%\">b</sub></p>")))
        .hasSize(1);
  }

  @Test
  void a_page_that_is_nearly_empty() {
    assertThat(ProofReader.thin(first("<p>A line</p>"))).hasSize(1);
    assertThat(ProofReader.thin(first(TALL + "<p>A line</p>"))).isEmpty();
  }

  @Test
  void a_heading_or_a_bold_title_at_the_foot_of_a_page() {
    for (String last : List.of("<h2>Alone</h2>", "<p><b>Alone</b></p>")) {
      List<Sheet> sheets = printed(TALL + last + NEXT).sheets();
      assertThat(ProofReader.orphan(sheets.get(0), sheets.get(1))).hasSize(1);
    }
    List<Sheet> sheets = printed(TALL + "<p><b>First words</b> of more</p>" + NEXT).sheets();
    assertThat(ProofReader.orphan(sheets.get(0), sheets.get(1))).isEmpty();
  }

  @Test
  void a_link_of_a_working_that_leads_to_another_line() {
    String links = "<p><a href=\"#w1\" title=\"w1\">w1</a></p>";
    assertThat(ProofReader.links(printed(links + "<p id=\"w1\">w1 is here</p>"))).isEmpty();
    assertThat(ProofReader.links(printed(links + "<p id=\"w1\">something else</p>"))).hasSize(1);
  }

  @Test
  void page_numbers_of_the_contents_that_are_wrong() {
    String five = "<p><a href=\"#next\" title=\"next\">2</a></p>".repeat(5);
    String next = "<p id=\"next\" style=\"page-break-before: always\">The next page</p>";
    assertThat(ProofReader.contents(printed(five + next))).isEmpty();
    assertThat(ProofReader.contents(printed(five.replace(">2<", ">3<") + next))).hasSize(5);
    assertThat(ProofReader.contents(printed(next))).hasSize(1);
  }

  @Test
  void references_to_what_is_not_there() {
    assertThat(ProofReader.references("<p id=\"w1\">as in (w1), <a href=\"#w1\">w1</a>.</p>"))
        .isEmpty();
    assertThat(ProofReader.references("<p>as in (w2.3), <a href=\"#gone\">there</a></p>"))
        .containsExactlyInAnyOrder("no element has the id gone", "no working has the number w2.3");
  }
}
