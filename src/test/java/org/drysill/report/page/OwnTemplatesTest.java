package org.drysill.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.stream.Stream;
import org.drysill.report.font.Fonts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What templates of a user's own can do, and all that they cannot. */
class OwnTemplatesTest {
  private static final Fonts FONTS = new Fonts();

  @TempDir private Path folder;

  private String filled(String template) throws IOException {
    Files.writeString(folder.resolve("report.ftlh"), template);
    return new Templates(FONTS, OwnTemplates.read(folder), Duration.ofSeconds(3))
        .render("report.ftlh", Map.of("charts", Map.of(), "word", "a & b"));
  }

  private void refused(String template, String... words) {
    assertThatThrownBy(() -> filled(template))
        .isInstanceOf(TemplateProblem.class)
        .hasMessageContainingAll(words);
  }

  @Test
  void a_template_of_ones_own_stands_before_the_bundled_one_and_reaches_both_folders()
      throws IOException {
    Files.writeString(folder.resolve("part.ftlh"), "<b>${word}</b>");
    assertThat(
            filled(
                "<#import \"macros.ftlh\" as m><p><#include \"part.ftlh\">"
                    + "<@m.verdict of=\"short\"/></p>"))
        .contains("<b>a &amp; b</b>", "mark short");
    Files.writeString(folder.resolve("screen.css"), "p { color: red; } /* ${word} */");
    assertThat(new Templates(FONTS, OwnTemplates.read(folder)).style("screen.css"))
        .isEqualTo("p { color: red; } /* ${word} */");
  }

  @Test
  void a_name_that_nothing_asks_for_is_a_slip() throws IOException {
    Files.writeString(folder.resolve("reprot.ftlh"), "<p>never shown</p>");
    refused("<p/>", "reprot.ftlh", "did you mean report.ftlh?");
    Files.delete(folder.resolve("reprot.ftlh"));
    Files.writeString(folder.resolve("mine.css"), "p { color: red; }");
    refused("<p/>", "mine.css", "the bundled ones are blocks.ftlh, brief.ftlh");
  }

  @Test
  void the_bundled_ones_are_those_of_the_folder() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("templates"))) {
      assertThat(files.map(file -> file.getFileName().toString()).sorted())
          .containsExactlyElementsOf(OwnTemplates.BUNDLED);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "${\"1+1\"?eval}",
        "${\"1\" ?<#-- aside -->\n eval}",
        "${'[1]'?eval_json}",
        "<@\"x\"?interpret/>",
        "${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
        "${word?api.class}",
        "${\"<i>\"?no_esc}",
        "<#noautoesc>${word}</#noautoesc>",
        "<#outputformat \"undefined\">${word}</#outputformat>",
        "<#ftl auto_esc=false>${word}"
      })
  void program_text_classes_and_bare_markup(String probe) {
    refused("\n" + probe, "own template report.ftlh, line ", "not allowed");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../secret.ftlh",
        "/../secret.ftlh",
        "/etc/passwd",
        "file:///etc/passwd",
        "http://localhost/x.ftlh",
        "secret/../../secret.ftlh"
      })
  void files_outside_of_the_two_folders(String name) throws IOException {
    Path secret = Files.writeString(folder.resolveSibling("secret.ftlh"), "secret");
    try {
      refused("<#include \"" + name + "\">", "report.ftlh", "line 1");
    } finally {
      Files.delete(secret);
    }
  }

  @Test
  void links_that_leave_the_folder() throws IOException {
    Path secret = Files.writeString(folder.resolveSibling("linked.txt"), "secret");
    Files.createSymbolicLink(folder.resolve("part.ftlh"), secret);
    refused("<#include \"part.ftlh\">", "part.ftlh", "not a link");
    Files.delete(secret);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "<#list 1.. as x>much text </#list>; write more than",
        "<#list 1.. as x></#list>; take longer than",
        "<#macro m><@m/></#macro><@m/>; calls itself",
        "<#function f x><#return f(x + 1)></#function>${f(1)}; calls itself"
      })
  void loops_and_recursion_without_end(String probe, String words) {
    refused(probe, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "<p>${nothing}</p>; own template report.ftlh, line 1",
        "<p><#if></p>; own template report.ftlh, line 1",
        "<p>; not well-formed",
        "<script>x</script>; element script",
        "<p onclick=\"x\">x</p>; attribute onclick",
        "<img alt=\"x\" src=\"http://localhost/x.png\"/>; attribute src",
        "<img alt=\"x\" src=\"file:///etc/passwd\"/>; attribute src",
        "<meta http-equiv=\"refresh\" content=\"0\"/>; element meta",
        "<object type=\"chart/x\" data=\"none\"></object>; a chart that there is not"
      })
  void a_wrong_template_is_told_with_its_place(String probe, String words) {
    refused(probe, words);
  }

  @Test
  void a_folder_without_templates_or_with_what_is_no_text() throws IOException {
    assertThatThrownBy(() -> OwnTemplates.read(folder))
        .isInstanceOf(TemplateProblem.class)
        .hasMessageContaining("must hold");
    Files.write(folder.resolve("report.ftlh"), new byte[] {(byte) 0xff, (byte) 0xfe});
    assertThatThrownBy(() -> OwnTemplates.read(folder)).hasMessageContaining("not UTF-8");
    Files.write(folder.resolve("report.ftlh"), new byte[(1 << 20) + 1]);
    assertThatThrownBy(() -> OwnTemplates.read(folder)).hasMessageContaining("larger than");
  }
}
