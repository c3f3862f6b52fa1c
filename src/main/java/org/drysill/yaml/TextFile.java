package org.drysill.yaml;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.yaml.ProblemList.Finding;

/**
 * The text of a file from disk, or why there is none.
 *
 * @param text the text, without a byte order mark
 * @param marked whether a byte order mark stood before it
 * @param problems the problem, where there is no text
 */
public record TextFile(Optional<String> text, boolean marked, List<Problem> problems) {
  /** The most bytes that a file may have; surveys have some thousands. */
  static final int MOST_BYTES = 4 * 1024 * 1024;

  /** What some editors put before the text of a file. */
  public static final String BYTE_ORDER_MARK = "\uFEFF";

  /** Copies the list. */
  public TextFile {
    problems = List.copyOf(problems);
  }

  /**
   * Reads a file of UTF-8 text, refusing a large one before it is read.
   *
   * @param file the file
   * @param name the name that problems are reported under
   */
  public static TextFile read(Path file, String name) {
    try {
      if (Files.isDirectory(file)) {
        return refused(name, YamlCode.UNREADABLE, Finding.of("a folder", "a file"));
      }
      return Files.size(file) > MOST_BYTES ? tooLarge(name) : bytes(file, name);
    } catch (NoSuchFileException missing) {
      return refused(name, YamlCode.UNREADABLE, Finding.of("no such file", "an existing file"));
    } catch (IOException closed) {
      String found = "a file that cannot be read: " + FileTrouble.why(closed);
      return refused(name, YamlCode.UNREADABLE, Finding.of(found, "a readable file"));
    }
  }

  private static TextFile bytes(Path file, String name) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      return bytes.length > MOST_BYTES ? tooLarge(name) : decode(bytes, name);
    }
  }

  private static TextFile tooLarge(String name) {
    String most = MOST_BYTES / (1024 * 1024) + " MB";
    return refused(name, YamlCode.TOO_LARGE, Finding.of("more than " + most, "at most " + most));
  }

  /**
   * The text of bytes that should be UTF-8.
   *
   * @param bytes the bytes of a file
   * @param name the name that problems are reported under
   */
  public static TextFile decode(byte[] bytes, String name) {
    if (bytes.length > 1 && (bytes[0] & 0xFF) + (bytes[1] & 0xFF) == 0xFE + 0xFF) {
      return refused(name, YamlCode.NOT_UTF8, Finding.of("UTF-16", "text saved as UTF-8"));
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult result = decoder.decode(in, out, true);
    String decoded = out.flip().toString();
    boolean marked = decoded.startsWith(BYTE_ORDER_MARK);
    String text = marked ? decoded.substring(1) : decoded;
    if (result.isError()) {
      return notUtf8(text, bytes[in.position()] & 0xFF, name);
    }
    return new TextFile(Optional.of(text), marked, List.of());
  }

  private static TextFile notUtf8(String before, int culprit, String name) {
    ProblemList problems = new ProblemList(new Lines(name, before));
    problems.add(
        YamlCode.NOT_UTF8,
        problems.lines().atChar(before.length()),
        "",
        Finding.of(
            String.format(Locale.ROOT, "the byte 0x%02X, which is not UTF-8", culprit),
            "text saved as UTF-8"));
    return new TextFile(Optional.empty(), false, problems.inOrder());
  }

  private static TextFile refused(String name, YamlCode code, Finding finding) {
    ProblemList problems = new ProblemList(new Lines(name, ""));
    problems.add(code, new Place(name, 1, 1), "", finding);
    return new TextFile(Optional.empty(), false, problems.inOrder());
  }
}
