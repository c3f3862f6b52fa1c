package org.drysill.report;

import java.util.function.Supplier;

/** A finished report in its three forms, all of the same figures. */
public final class Report {
  private final byte[] pdf;
  private final Supplier<String> html;
  private final byte[] json;
  private final String verdict;

  Report(byte[] pdf, Supplier<String> html, byte[] json, String verdict) {
    this.pdf = pdf;
    this.html = html;
    this.json = json;
    this.verdict = verdict;
  }

  /** The PDF file. */
  public byte[] pdf() {
    return pdf.clone();
  }

  /** The HTML file, made when it is asked for. */
  public String html() {
    return html.get();
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
