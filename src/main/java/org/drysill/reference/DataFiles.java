package org.drysill.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
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

  private static String complaint(String path, List<Problem> problems) {
    return problems.stream()
        .map(ProblemText::of)
        .collect(Collectors.joining("\n", "bundled file reference/" + path + "\n", ""));
  }
}
