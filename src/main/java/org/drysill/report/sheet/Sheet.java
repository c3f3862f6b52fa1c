package org.drysill.report.sheet;

import java.util.function.Supplier;

/** A sheet in its forms. */
public final class Sheet {
  private final byte[] pdf;
  private final Supplier<String> html;
  private final String heading;

  Sheet(byte[] pdf, Supplier<String> html, String heading) {
    this.pdf = pdf;
    this.html = html;
    this.heading = heading;
  }

  /** The PDF file. */
  public byte[] pdf() {
    return pdf.clone();
  }

  /** The HTML file, made when it is asked for. */
  public String html() {
    return html.get();
  }

  /** The finding in one sentence. */
  public String heading() {
    return heading;
  }
}
