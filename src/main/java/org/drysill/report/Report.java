package org.drysill.report;

/** A finished report in its three forms, all of the same figures. */
public final class Report {
  private final byte[] pdf;
  private final String html;
  private final byte[] json;
  private final String verdict;

  Report(byte[] pdf, String html, byte[] json, String verdict) {
    this.pdf = pdf;
    this.html = html;
    this.json = json;
    this.verdict = verdict;
  }

  /** The PDF file. */
  public byte[] pdf() {
    return pdf.clone();
  }

  /** The HTML file. */
  public String html() {
    return html;
  }

  /** The results file, UTF-8. */
  public byte[] json() {
    return json.clone();
  }

  /** The verdict in one line: the heading of the first page. */
  public String verdict() {
    return verdict;
  }
}
