package org.drysill.survey.log.read;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Bytes that are hashed while they pass. */
final class HashedStream extends FilterInputStream {
  private final MessageDigest digest;
  private byte last = '\n';

  HashedStream(InputStream in) {
    super(in);
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] into, int offset, int length) throws IOException {
    int count = in.read(into, offset, length);
    if (count > 0) {
      digest.update(into, offset, count);
      last = into[offset + count - 1];
    }
    return count;
  }

  /** Reads what is left, and gives the SHA-256 of all bytes in hexadecimal digits. */
  String sha256() throws IOException {
    transferTo(OutputStream.nullOutputStream());
    return HexFormat.of().formatHex(digest.digest());
  }

  /** True where the last byte is not that of a line end. */
  boolean endsWithinLine() {
    return last != '\n' && last != '\r' && last != 0;
  }
}
