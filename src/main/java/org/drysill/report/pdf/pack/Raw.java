package org.drysill.report.pdf.pack;

import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.drysill.report.pdf.deflate.Deflation;

/** The bytes of a stream as they are to stand in a file. */
final class Raw {
  /** What is larger, such as logs of years, would take seconds. */
  private static final int MOST_BYTES = 4_000_000;

  private static final byte[] NOTHING = {};

  private final byte[] content;
  private final byte[] before;

  /**
   * A stream.
   *
   * @param content what is to be deflated; nothing where the stream is to stay as it is
   * @param before its bytes as they were; nothing where it was not deflated yet
   */
  private Raw(byte[] content, byte[] before) {
    this.content = content;
    this.before = before;
  }

  /** A stream of the document; deflated anew where deflation is all that was done to it. */
  static Raw of(COSStream stream) throws IOException {
    byte[] before;
    try (InputStream in = stream.createRawInputStream()) {
      before = in.readAllBytes();
    }
    if (!COSName.FLATE_DECODE.equals(stream.getFilters())
        || stream.containsKey(COSName.DECODE_PARMS)) {
      return new Raw(NOTHING, before);
    }
    try (InputStream in = stream.createInputStream()) {
      byte[] content = in.readAllBytes();
      return new Raw(content.length > MOST_BYTES ? NOTHING : content, before);
    }
  }

  /** Bytes that are to be deflated. */
  static Raw ofContent(byte[] content) {
    return new Raw(content, NOTHING);
  }

  /** The shorter of what the bytes were and what they become. Takes long; independent of others. */
  byte[] packed() {
    if (content.length == 0) {
      return before;
    }
    byte[] after = Deflation.of(content);
    return before.length == 0 || after.length < before.length ? after : before;
  }
}
