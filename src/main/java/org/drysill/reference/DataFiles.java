package org.drysill.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.drysill.yaml.Problem;
import org.drysill.yaml.ProblemText;
import org.drysill.yaml.Reading;
import org.drysill.yaml.RecordReader;
import org.drysill.yaml.Vocabularies;

/**
 * The bundled data files. {@code index.txt} names every one of them, one path a line, because the
 * inside of a jar cannot be listed reliably.
 */
public final class DataFiles {
  private static final String INDEX = "index.txt";

  /** What was read so far. It is as fixed as the program, and several chapters look into it. */
  private static final Map<Entry, Record> READ = new ConcurrentHashMap<>();

  private record Entry(String path, Class<? extends Record> type) {}

  private DataFiles() {}

  /**
   * Reads every file directly within a folder, in name order.
   *
   * @param folder the folder below {@code reference}, such as {@code rules}
   * @param type the record that each file fills
   */
  public static <T extends Record> List<T> readAll(String folder, Class<T> type) {
    return paths(folder).stream().map(path -> read(path, type)).toList();
  }

  /**
   * Reads one file.
   *
   * @param path the path below {@code reference}, such as {@code rules/england.yaml}
   * @param type the record that it fills
   * @throws IllegalStateException where bundled data is missing or does not read: a defect of the
   *     program, not of a survey
   */
  public static <T extends Record> T read(String path, Class<T> type) {
    return type.cast(READ.computeIfAbsent(new Entry(path, type), file -> parse(path, type)));
  }

  private static <T extends Record> T parse(String path, Class<T> type) {
    Reading<T> reading = RecordReader.read(type, text(path), path, Vocabularies.none());
    return reading
        .value()
        .orElseThrow(() -> new IllegalStateException(complaint(path, reading.problems())));
  }

  /** The paths of the files directly within a folder, in name order. */
  public static List<String> paths(String folder) {
    return index().stream()
        .filter(path -> path.startsWith(folder + "/"))
        .filter(path -> path.indexOf('/', folder.length() + 1) < 0)
        .sorted()
        .toList();
  }

  static List<String> index() {
    return text(INDEX).lines().filter(line -> !line.isBlank()).toList();
  }

  /** The text of a bundled file. */
  public static String text(String path) {
    try (InputStream in = DataFiles.class.getResourceAsStream("/reference/" + path)) {
      if (in == null) {
        throw new IllegalStateException("no bundled file reference/" + path);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException("cannot read bundled file reference/" + path, broken);
    }
  }

  /** What identifies the bundled data as a whole: two programs with the same have the same data. */
  public static Digest digest() {
    return Digests.OF_ALL;
  }

  /**
   * A digest of files.
   *
   * @param files how many
   * @param sha256 SHA-256 over all of them, in hexadecimal digits: of each, in the order of {@code
   *     index.txt}, its path, a line end, the number of its bytes, a line end, and its bytes
   */
  public record Digest(int files, String sha256) {}

  /** Made once, and only where it is asked for. */
  private static final class Digests {
    static final Digest OF_ALL = digest(index());

    private static Digest digest(List<String> paths) {
      try {
        MessageDigest all = MessageDigest.getInstance("SHA-256");
        for (String path : paths) {
          byte[] bytes = text(path).getBytes(StandardCharsets.UTF_8);
          String head = path + "\n" + bytes.length + "\n";
          all.update(head.getBytes(StandardCharsets.UTF_8));
          all.update(bytes);
        }
        return new Digest(paths.size(), HexFormat.of().formatHex(all.digest()));
      } catch (NoSuchAlgorithmException e) {
        throw new IllegalStateException("every Java has SHA-256", e);
      }
    }
  }

  private static String complaint(String path, List<Problem> problems) {
    return problems.stream()
        .map(ProblemText::of)
        .collect(Collectors.joining("\n", "bundled file reference/" + path + "\n", ""));
  }
}
