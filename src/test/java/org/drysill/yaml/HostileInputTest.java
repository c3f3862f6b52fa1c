package org.drysill.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A text from anywhere ends in a record or in located problems, never in an exception. */
class HostileInputTest {
  record Leaf(
      @Key(about = "Name") Optional<String> name,
      @Key(about = "Leaves") List<Leaf> leaves,
      @Key(about = "Photo", file = true) Optional<String> photo) {}

  private static Reading<Leaf> read(String text) {
    return RecordReader.read(Leaf.class, text, "leaf.yaml", Vocabularies.none());
  }

  private static String bomb() {
    StringBuilder text = new StringBuilder("leaves:\n- &a0 {name: x}\n");
    for (int i = 1; i < 30; i++) {
      text.append("- &a").append(i).append(" {leaves: [");
      text.append(("*a" + (i - 1) + ", ").repeat(9)).append("*a").append(i - 1).append("]}\n");
    }
    return text.toString();
  }

  static Stream<Arguments> hostile() {
    return Stream.of(
        Arguments.of("nothing", "", "Y005 1:1"),
        Arguments.of("comments only", "# nothing\n\n", "Y005 1:1"),
        Arguments.of("prose", "Dear Sir\n", "Y015 1:1"),
        Arguments.of("a list", "- name: x\n", "Y015 1:1"),
        Arguments.of("a tab for indentation", "leaves:\n\t- name: x\n", "Y007 2:1"),
        Arguments.of("an open bracket", "leaves: [{name: x}\nname: y", "Y006 2:1"),
        Arguments.of("an open quotation mark", "name: \"x\n", "Y006 2:1"),
        Arguments.of("two colons", "name: a: b\n", "Y006 1:8"),
        Arguments.of("an unknown alias", "name: *x\n", "Y006 1:7"),
        Arguments.of("a percent sign", "name: %x\n", "Y006 1:7"),
        Arguments.of("two documents", "name: x\n---\nname: y\n", "Y008 2:1"),
        Arguments.of("an alias bomb", bomb(), "Y010 5:17"),
        Arguments.of("brackets without end", "name: " + "[".repeat(100_000), "Y009 1:56"),
        Arguments.of("deep keys", deep(), "Y009 51:51"),
        Arguments.of("a key twice", "name: x\nname: y\n", "Y012 2:1"),
        Arguments.of("an unknown key", "nmae: x\n", "Y013 1:1"),
        Arguments.of("a global tag", "name: !!java.net.URL x\n", "Y011 1:7"),
        Arguments.of("a binary tag", "name: !!binary aGk=\n", "Y011 1:7"),
        Arguments.of("a local tag", "!thing\nname: x\n", "Y011 1:1"),
        Arguments.of("a merge key", "leaves: [&a {name: x}, {<<: *a}]\n", "Y013 1:25"),
        Arguments.of("an alias within its anchor", "leaves: &a [{leaves: *a}]\n", "Y029 1:9"),
        Arguments.of("a list as key", "[a, b]: x\n", "Y013 1:1"),
        Arguments.of("a bell", "name: a\u0007b\n", "Y004 1:8"),
        Arguments.of("a NUL", "name: x\n\0", "Y004 2:1"),
        Arguments.of("a C1 control", "name: x\u0090\n", "Y004 1:8"),
        Arguments.of("half a surrogate pair", "name: \uD83D\n", "Y004 1:7"),
        Arguments.of("a bell as escape", "name: \"a\\u0007b\"\n", "Y004 1:7"),
        Arguments.of("half a pair as escape", "name: \"\\ud83d\"\n", "Y004 1:7"),
        Arguments.of("too many characters", "name: " + "x".repeat(5_000_000), "Y002 1:1"),
        Arguments.of("an absolute path", "photo: /etc/hostname\n", "Y026 1:8"),
        Arguments.of("a path upwards", "photo: a/../../b.jpg\n", "Y026 1:8"),
        Arguments.of("a path of another system", "photo: a\\b.jpg\n", "Y026 1:8"),
        Arguments.of("a drive", "photo: C:/b.jpg\n", "Y026 1:8"));
  }

  private static String deep() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 200; i++) {
      text.append(" ".repeat(i)).append("a:\n");
    }
    return text.toString();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("hostile")
  void ends_in_a_located_problem(String what, String text, String codeAndPlace) {
    Reading<Leaf> reading = read(text);
    assertThat(reading.value()).as(what).isEmpty();
    assertThat(reading.problems())
        .extracting(p -> p.code() + " " + p.place().line() + ":" + p.place().column())
        .containsExactly(codeAndPlace);
    String told = ProblemText.of(reading.problems().get(0));
    assertThat(told).doesNotContain("Exception", "snakeyaml", "null");
    assertThat(told.lines().mapToInt(String::length).max().orElse(0)).isLessThan(400);
  }

  @ParameterizedTest
  @MethodSource("endings")
  void line_ends_and_a_byte_order_mark_change_no_place(String text) {
    assertThat(read(text).problems())
        .singleElement()
        .satisfies(p -> assertThat(p.place()).isEqualTo(new Place("leaf.yaml", 2, 1)));
  }

  static Stream<String> endings() {
    return Stream.of("name: x\nnmae: y\n", "name: x\r\nnmae: y\r\n", "name: x\rnmae: y\r")
        .flatMap(text -> Stream.of(text, "\uFEFF" + text));
  }

  @Test
  void a_line_separator_within_a_text_counts_no_line() {
    assertThat(read("name: \"x\u2028 y\"\nnmae: z\n").problems())
        .singleElement()
        .satisfies(p -> assertThat(p.place().line()).isEqualTo(2));
  }

  @Test
  void aliases_in_moderation_are_allowed() {
    Leaf leaf = read("leaves: [&a {name: x}, *a]\n").value().orElseThrow();
    assertThat(leaf.leaves()).extracting(l -> l.name().orElse("")).containsExactly("x", "x");
  }

  @Test
  void markup_and_strange_scripts_are_text_like_any_other() {
    String text = "<script>${x}</script> \"q\" 😀 שלום";
    assertThat(read("name: '" + text + "'\n").value().orElseThrow().name()).contains(text);
  }

  @Test
  void a_large_file_is_refused_before_it_is_read(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("large.yaml");
    try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
      large.setLength(50L * 1024 * 1024);
    }
    assertThat(TextFile.read(file, "large.yaml").problems())
        .extracting(ProblemText::of)
        .containsExactly("large.yaml:1:1: error Y002: found more than 4 MB, expected at most 4 MB");
  }

  @Test
  void a_folder_and_a_missing_file_are_told_apart(@TempDir Path folder) {
    assertThat(TextFile.read(folder, "f").problems().get(0).found()).isEqualTo("a folder");
    assertThat(TextFile.read(folder.resolve("no"), "no").problems().get(0).found())
        .isEqualTo("no such file");
  }

  @Test
  void bytes_that_are_no_utf_8_are_refused_where_they_stand(@TempDir Path folder)
      throws IOException {
    Path file =
        Files.write(
            folder.resolve("x"), "name: x\nd\u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(TextFile.read(file, "x").problems())
        .extracting(ProblemText::heading)
        .containsExactly(
            "x:2:2: error Y003: found the byte 0xE9, which is not UTF-8, expected text saved as"
                + " UTF-8");
  }

  @Test
  void utf_16_is_named(@TempDir Path folder) throws IOException {
    Path file = Files.write(folder.resolve("x"), "name: x".getBytes(StandardCharsets.UTF_16));
    assertThat(TextFile.read(file, "x").problems().get(0).found()).isEqualTo("UTF-16");
  }

  @Test
  void a_byte_order_mark_is_no_part_of_the_text(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("x"), "\uFEFFname: x");
    assertThat(TextFile.read(file, "x").text()).contains("name: x");
  }
}
