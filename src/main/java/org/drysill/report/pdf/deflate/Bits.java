package org.drysill.report.pdf.deflate;

import java.io.ByteArrayOutputStream;

/** Writes bits, the lowest of each byte first (RFC 1951, 3.1.1). */
final class Bits {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private long waiting;
  private int count;

  /**
   * Writes a number.
   *
   * @param value the number, not negative
   * @param bits how many of its lowest bits, 0 to 32
   */
  void write(int value, int bits) {
    waiting |= (value & 0xffff_ffffL) << count;
    count += bits;
    while (count >= Byte.SIZE) {
      out.write((int) waiting);
      waiting >>>= Byte.SIZE;
      count -= Byte.SIZE;
    }
  }

  /** Fills the last byte. */
  void fill() {
    write(0, (Byte.SIZE - count) % Byte.SIZE);
  }

  byte[] bytes() {
    return out.toByteArray();
  }
}
