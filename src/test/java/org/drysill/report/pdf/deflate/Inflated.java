package org.drysill.report.pdf.deflate;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.zip.Deflater;
import java.util.zip.InflaterInputStream;

/** What the Java machine makes of deflated bytes, and how it would have deflated them. */
final class Inflated {
  private Inflated() {}

  /** The bytes that were deflated; the check sum at the end is looked at. */
  static byte[] of(byte[] deflated) {
    try (InflaterInputStream in = new InflaterInputStream(new ByteArrayInputStream(deflated))) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** How many bytes the strongest deflation of the Java machine takes. */
  static int usualLength(byte[] content) {
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
    deflater.setInput(content);
    deflater.finish();
    int length = deflater.deflate(new byte[content.length + 1000]);
    deflater.end();
    return length;
  }
}
