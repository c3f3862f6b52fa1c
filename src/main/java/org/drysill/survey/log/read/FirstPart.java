package org.drysill.survey.log.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The first part of a file, enough to tell how it is written.
 *
 * @param charset its encoding
 * @param lines its first lines
 */
record FirstPart(Charset charset, List<String> lines) {
  private static final int BYTES = 1 << 16;

  /** Text has hardly any control characters; a spreadsheet or archive has several in a hundred. */
  private static final double MOST_CONTROLS = 0.01;

  /** In UTF-16, every other byte of Latin text is zero. */
  private static final double ZEROS_OF_UTF16 = 0.3;

  private static final int END_OF_TEXT_FILE = 0x1A;

  FirstPart {
    lines = List.copyOf(lines);
  }

  /** Reads it; empty where the file is no text. */
  static Optional<FirstPart> of(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(BYTES);
      return of(bytes, bytes.length == BYTES);
    }
  }

  private static Optional<FirstPart> of(byte[] bytes, boolean hasMore) {
    Charset charset = charset(bytes);
    boolean wide = charset.name().startsWith("UTF-16");
    if (!wide && controls(bytes) > MOST_CONTROLS * bytes.length) {
      return Optional.empty();
    }
    String text = new String(bytes, charset);
    String[] lines = text.replaceFirst("^\uFEFF", "").split("\r\n|\r|\n", -1);
    int whole = hasMore ? lines.length - 1 : lines.length;
    return Optional.of(new FirstPart(charset, Arrays.asList(lines).subList(0, whole)));
  }

  private static Charset charset(byte[] bytes) {
    if (begins(bytes, 0xFF, 0xFE)) {
      return StandardCharsets.UTF_16LE;
    }
    if (begins(bytes, 0xFE, 0xFF)) {
      return StandardCharsets.UTF_16BE;
    }
    if (zeros(bytes, 1) > ZEROS_OF_UTF16 * bytes.length) {
      return StandardCharsets.UTF_16LE;
    }
    if (zeros(bytes, 0) > ZEROS_OF_UTF16 * bytes.length) {
      return StandardCharsets.UTF_16BE;
    }
    return isUtf8(bytes) ? StandardCharsets.UTF_8 : Charset.forName("windows-1252");
  }

  private static boolean begins(byte[] bytes, int first, int second) {
    return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
  }

  private static int zeros(byte[] bytes, int from) {
    int zeros = 0;
    for (int i = from; i < bytes.length; i += 2) {
      zeros += bytes[i] == 0 ? 1 : 0;
    }
    return zeros;
  }

  private static int controls(byte[] bytes) {
    int controls = 0;
    for (byte b : bytes) {
      boolean usual = b == '\t' || b == '\n' || b == '\r' || b == '\f' || b == END_OF_TEXT_FILE;
      controls += b >= 0 && b < ' ' && !usual ? 1 : 0;
    }
    return controls;
  }

  /** A character that is cut off at the end is no fault. */
  private static boolean isUtf8(byte[] bytes) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    return !decoder.decode(ByteBuffer.wrap(bytes), out, false).isError();
  }
}
