package org.drysill.report.pdf.pack;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.apache.pdfbox.cos.COSStream;

/** The bytes of streams as they stand in a file. */
final class Raw {
  private Raw() {}

  static byte[] bytes(COSStream stream) throws IOException {
    try (InputStream in = stream.createRawInputStream()) {
      return in.readAllBytes();
    }
  }

  /**
   * Deflates as strongly as can be.
   *
   * @param strategy for what kind of data, see {@link Deflater}
   */
  static byte[] deflated(byte[] content, int strategy) throws IOException {
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
    deflater.setStrategy(strategy);
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (DeflaterOutputStream out = new DeflaterOutputStream(packed, deflater)) {
      out.write(content);
    } finally {
      deflater.end();
    }
    return packed.toByteArray();
  }
}
