package org.drysill.report.pdf;

import java.util.List;
import java.util.Map;
import org.drysill.report.chart.ChartSpec;

/** Lays out a page text and its charts and writes the PDF. Not for use by two threads at once. */
public final class PdfRenderer {
  /** A renderer that reads its fonts when they are first asked for. */
  public PdfRenderer() {}

  /**
   * Renders a document.
   *
   * @param xhtml well-formed XHTML, as the templates make it; charts stand in it as {@code <object
   *     type="chart/kind" data="id" alt="…" style="width: …; height: …">}
   * @param charts the charts by id
   * @param metadata what the file says of itself
   * @param attachments the files that travel inside, in the order of their listing
   * @return the bytes of a PDF/A-3a and PDF/UA-1 file
   */
  public byte[] render(
      String xhtml,
      Map<String, ChartSpec> charts,
      PdfMetadata metadata,
      List<Attachment> attachments) {
    return new byte[0];
  }
}
