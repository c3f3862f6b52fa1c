package org.drysill.yaml;

import java.util.Optional;
import org.yaml.snakeyaml.nodes.Node;

/**
 * Reads a YAML text into a record whose components say with {@link Key} what they are. Every value
 * is taken as the text that stands in the file and typed by its component, so that a room called
 * {@code No} and a time {@code 1:30} stay what they are.
 */
public final class RecordReader {
  private RecordReader() {}

  /** Reads a text that names no files beside itself. */
  public static <T extends Record> Reading<T> read(
      Class<T> type, String text, String fileName, Vocabularies vocabularies) {
    return read(type, text, fileName, vocabularies, Folder.unknown());
  }

  /**
   * Reads a text.
   *
   * @param type the record to fill
   * @param text the text
   * @param fileName the name that problems are reported under
   * @param vocabularies the words that texts with a vocabulary may be
   * @param folder where the files lie that the text names
   * @return the record, or every problem that keeps it from being one
   */
  public static <T extends Record> Reading<T> read(
      Class<T> type, String text, String fileName, Vocabularies vocabularies, Folder folder) {
    String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
    Lines lines = new Lines(fileName, body);
    ProblemList problems = new ProblemList(lines);
    Optional<Node> root = YamlTree.of(body, problems);
    Optional<T> value = root.flatMap(node -> fill(type, node, problems, vocabularies, folder));
    return new Reading<>(
        problems.hasErrors() ? Optional.empty() : value,
        problems.inOrder(),
        value,
        new NodePlaces(lines, root));
  }

  private static <T extends Record> Optional<T> fill(
      Class<T> type, Node root, ProblemList problems, Vocabularies vocabularies, Folder folder) {
    Complaints complaints = new Complaints(problems);
    NodeReader reader = new NodeReader(complaints, vocabularies, folder);
    return reader.read(Shape.of(type), new Spot(root, "", NoKey.instance())).map(type::cast);
  }
}
