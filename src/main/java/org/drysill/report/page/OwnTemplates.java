package org.drysill.report.page;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drysill.yaml.Nearest;

/**
 * Templates and style sheets of a user's own, in place of those of the same name. They are read
 * whole before anything is rendered, so that a template can reach no file at all: what it includes
 * is among these texts or among the bundled ones.
 */
public final class OwnTemplates {
  /** No templates of one's own. */
  public static final OwnTemplates NONE = new OwnTemplates(Map.of());

  /** The templates and style sheets that come with the program. */
  static final List<String> BUNDLED =
      List.of(
          "blocks.ftlh",
          "brief.ftlh",
          "chapters.css",
          "macros.ftlh",
          "print.css",
          "report.ftlh",
          "screen.css",
          "sheet.ftlh");

  private static final long LARGEST = 1 << 20;
  private static final int MOST_FILES = 100;

  /**
   * What turns words into program text, classes or unescaped markup; comments may stand between.
   */
  private static final Pattern REFUSED =
      Pattern.compile(
          "\\?(?:\\s|[<\\[][#!]--.*?--[>\\]])*"
              + "(eval_json|evalJson|eval|interpret|new|api|no_esc|noEsc)\\b"
              + "|[<\\[][#](noautoesc|noAutoEsc|outputformat|outputFormat|ftl)\\b",
          Pattern.DOTALL);

  private final Map<String, String> texts;

  private OwnTemplates(Map<String, String> texts) {
    this.texts = Map.copyOf(texts);
  }

  /**
   * Reads a folder: files that end in {@code .ftlh} or {@code .css}, not those of its folders.
   *
   * @throws TemplateProblem where a file is a link, too large, not UTF-8, asks for what templates
   *     may not do, or has a name that nothing asks for
   * @throws IOException where the folder cannot be read
   */
  public static OwnTemplates read(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files = all.filter(OwnTemplates::isTemplate).sorted().limit(MOST_FILES + 1).toList();
    }
    if (files.isEmpty() || files.size() > MOST_FILES) {
      throw new TemplateProblem(
          folder + " must hold 1 to " + MOST_FILES + " templates (.ftlh) or style sheets (.css)");
    }
    Map<String, String> texts = new TreeMap<>();
    for (Path file : files) {
      String name = file.getFileName().toString();
      texts.put(name, allowed(name, text(file, name)));
    }
    texts.keySet().forEach(name -> refuseUnused(name, texts));
    return new OwnTemplates(texts);
  }

  /** A name that nothing asks for is a slip, and the bundled template would be used in silence. */
  private static void refuseUnused(String name, Map<String, String> texts) {
    boolean asked =
        BUNDLED.contains(name)
            || texts.entrySet().stream()
                .anyMatch(e -> !e.getKey().equals(name) && e.getValue().contains(name));
    if (!asked) {
      throw new TemplateProblem(
          name,
          0,
          "has the name of no bundled template and no other of the folder includes it; "
              + Nearest.of(name, BUNDLED)
                  .map(meant -> "did you mean " + meant + "?")
                  .orElse("the bundled ones are " + String.join(", ", BUNDLED)));
    }
  }

  private static boolean isTemplate(Path file) {
    String name = file.getFileName().toString();
    return name.endsWith(".ftlh") || name.endsWith(".css");
  }

  private static String text(Path file, String name) throws IOException {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new TemplateProblem(name, 0, "must be a file of the folder itself, not a link");
    }
    if (Files.size(file) > LARGEST) {
      throw new TemplateProblem(name, 0, "is larger than " + LARGEST + " bytes");
    }
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
          .toString();
    } catch (CharacterCodingException e) {
      throw new TemplateProblem(name, 0, "is not UTF-8 text");
    }
  }

  private static String allowed(String name, String text) {
    Matcher refused = REFUSED.matcher(text);
    if (refused.find()) {
      String word = refused.group(1) == null ? "#" + refused.group(2) : "?" + refused.group(1);
      int line = 1 + (int) text.substring(0, refused.end()).chars().filter(c -> c == '\n').count();
      throw new TemplateProblem(name, line, word + " is not allowed in templates of one's own");
    }
    return text;
  }

  /** Whether there are none. */
  public boolean isEmpty() {
    return texts.isEmpty();
  }

  /** The texts by the names of their files, in order. */
  public Map<String, String> texts() {
    return new TreeMap<>(texts);
  }
}
