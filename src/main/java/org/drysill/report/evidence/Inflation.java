package org.drysill.report.evidence;

import java.io.ByteArrayOutputStream;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Inflates with a limit. A few kilobytes of a file can be made to stand for gigabytes of memory,
 * and the PDF library inflates what it meets; so all streams are inflated once before, for their
 * size.
 */
final class Inflation {
  /** The most bytes that all streams of a file may inflate to. */
  static final long MOST_BYTES = 512L * 1024 * 1024;

  private static final byte[] STREAM = {'s', 't', 'r', 'e', 'a', 'm'};
  private static final int CHUNK = 1 << 16;

  private Inflation() {}

  /** Refuses a file whose streams inflate to more than {@link #MOST_BYTES}. */
  static void check(byte[] file) throws NotAReport {
    byte[] chunk = new byte[CHUNK];
    long left = MOST_BYTES;
    for (int at = next(file, 0); at >= 0; at = next(file, at)) {
      left -= size(file, at, left, chunk);
      if (left < 0) {
        throw new NotAReport("inflates to more than " + MOST_BYTES / 1024 / 1024 + " MB");
      }
    }
  }

  /** Where the data of the next stream begins; below zero where none does. */
  private static int next(byte[] file, int from) {
    for (int at = from; at + STREAM.length + 2 < file.length; at++) {
      if (isKeyword(file, at)) {
        int after = at + STREAM.length;
        return file[after] == '\r' ? after + 2 : after + 1;
      }
    }
    return -1;
  }

  private static boolean isKeyword(byte[] file, int at) {
    for (int i = 0; i < STREAM.length; i++) {
      if (file[at + i] != STREAM[i]) {
        return false;
      }
    }
    return true;
  }

  /** The inflated size of a stream as far as it can be inflated, and not far beyond the limit. */
  private static long size(byte[] file, int at, long most, byte[] chunk) {
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(file, at, file.length - at);
      long size = 0;
      int count = inflater.inflate(chunk);
      while (count > 0 && size <= most) {
        size += count;
        count = inflater.inflate(chunk);
      }
      return size;
    } catch (DataFormatException notDeflated) {
      return 0;
    } finally {
      inflater.end();
    }
  }

  /**
   * Inflates a stream.
   *
   * @param raw its bytes
   * @param most the most bytes that it may have
   * @param name the name that a refusal mentions
   */
  static byte[] inflated(byte[] raw, long most, String name) throws NotAReport {
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(raw);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      byte[] chunk = new byte[CHUNK];
      while (!inflater.finished()) {
        int count = inflater.inflate(chunk);
        out.write(chunk, 0, count);
        if (out.size() > most) {
          throw new NotAReport("has a file inside that is larger than expected: " + name);
        }
        if (count == 0 && !inflater.finished()) {
          throw new NotAReport("has a file inside that is cut off: " + name);
        }
      }
      return out.toByteArray();
    } catch (DataFormatException broken) {
      throw new NotAReport("has a file inside that is broken: " + name);
    } finally {
      inflater.end();
    }
  }
}
