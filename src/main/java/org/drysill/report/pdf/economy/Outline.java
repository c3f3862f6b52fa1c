package org.drysill.report.pdf.economy;

import java.nio.ByteBuffer;

/** The outline of one glyph of a TrueType font, without its instructions. */
final class Outline {
  private static final int HEAD = 10;
  private static final int WORDS = 0x0001;
  private static final int SCALE = 0x0008;
  private static final int MORE = 0x0020;
  private static final int TWO_SCALES = 0x0040;
  private static final int MATRIX = 0x0080;
  private static final int INSTRUCTIONS = 0x0100;

  private Outline() {}

  /** The bytes of a glyph, of an even number. */
  static byte[] of(ByteBuffer glyph) {
    if (glyph.capacity() == 0) {
      return new byte[0];
    }
    return glyph.getShort(0) >= 0 ? simple(glyph) : composed(glyph);
  }

  private static byte[] simple(ByteBuffer glyph) {
    int length = HEAD + 2 * glyph.getShort(0);
    int rest = length + 2 + (glyph.getShort(length) & 0xffff);
    int size = length + 2 + glyph.capacity() - rest;
    byte[] out = new byte[size + size % 2];
    glyph.get(0, out, 0, length);
    glyph.get(rest, out, length + 2, glyph.capacity() - rest);
    return out;
  }

  private static byte[] composed(ByteBuffer glyph) {
    int at = HEAD;
    int flags;
    do {
      flags = glyph.getShort(at);
      glyph.putShort(at, (short) (flags & ~INSTRUCTIONS));
      at += 4 + ((flags & WORDS) == 0 ? 2 : 4) + scale(flags);
    } while ((flags & MORE) != 0);
    byte[] out = new byte[at + at % 2];
    glyph.get(0, out, 0, at);
    return out;
  }

  private static int scale(int flags) {
    if ((flags & SCALE) != 0) {
      return 2;
    }
    if ((flags & TWO_SCALES) != 0) {
      return 4;
    }
    return (flags & MATRIX) == 0 ? 0 : 8;
  }
}
