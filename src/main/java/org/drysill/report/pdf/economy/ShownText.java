package org.drysill.report.pdf.economy;

import java.io.ByteArrayOutputStream;

/** A string within a line of contents, in brackets or as hexadecimal digits. */
final class ShownText {
  private static final int HEX = 16;

  private final byte[] bytes;
  private final int end;

  private ShownText(byte[] bytes, int end) {
    this.bytes = bytes;
    this.end = end;
  }

  /** What it holds. */
  byte[] bytes() {
    return bytes;
  }

  /** Where the line goes on. */
  int end() {
    return end;
  }

  /** The string that begins at a place of a line. */
  static ShownText at(String line, int start) {
    return line.charAt(start) == '<' ? digits(line, start) : characters(line, start);
  }

  private static ShownText digits(String line, int start) {
    int end = line.indexOf('>', start);
    byte[] bytes = new byte[(end - start - 1) / 2];
    for (int i = 0; i < bytes.length; i++) {
      int digit = start + 1 + 2 * i;
      bytes[i] = (byte) Integer.parseInt(line, digit, digit + 2, HEX);
    }
    return new ShownText(bytes, end + 1);
  }

  /** The library escapes brackets and the stroke, and writes anything unusual in digits. */
  private static ShownText characters(String line, int start) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    int at = start + 1;
    while (line.charAt(at) != ')') {
      if (line.charAt(at) == '\\') {
        at++;
      }
      bytes.write(line.charAt(at));
      at++;
    }
    return new ShownText(bytes.toByteArray(), at + 1);
  }
}
