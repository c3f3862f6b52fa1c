package org.drysill.benchmark;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.drysill.report.pdf.PdfMetadata;
import org.drysill.report.pdf.PdfRenderer;

/** The least that can be asked of the renderer: one line of text, no stylesheet, no chart. */
final class OnePage {
  private OnePage() {}

  public static void main(String[] arguments) {
    String page =
        "<html lang=\"en\"><head><title>One page</title></head>"
            + "<body style=\"font-family: Body\"><p>One page.</p></body></html>";
    PdfMetadata metadata =
        new PdfMetadata("One page", "", "One page", List.of(), "en", "Drysill", LocalDate.EPOCH);
    byte[] pdf = new PdfRenderer().render(page, Map.of(), metadata, List.of());
    System.out.println(pdf.length + " bytes");
  }
}
