package org.drysill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetCommandTest {
  private static final String SURVEY =
      """
      drysill: 1
      visit: {date: 2026-01-20}
      dwelling: {floor_area: 40 m2, jurisdiction: germany}
      rooms:
        - {id: bath, use: bathroom, floor_area: 5 m2}
        - {id: bed, use: bedroom, floor_area: 12 m2}
      """;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder;
  private Path survey;

  @BeforeEach
  void write() throws IOException {
    survey = Files.writeString(folder.resolve("home.yaml"), SURVEY);
  }

  private int run(String... arguments) {
    return Main.run(
        new PrintWriter(out, true), new PrintWriter(err, true), Map.of(), false, arguments);
  }

  @Test
  void a_small_survey_gives_a_sheet_beside_it() {
    assertThat(run("sheet", survey.toString(), "--language", "de")).isZero();
    assertThat(folder.resolve("home-sheet-de.pdf")).isNotEmptyFile();
    assertThat(out.toString()).contains("Ob Ihr Zuhause genug frische Luft bekommt");
  }

  @Test
  void the_page_for_a_screen_is_written_where_asked() throws IOException {
    Path html = folder.resolve("x.html");
    assertThat(run("sheet", survey.toString(), "--html", html.toString(), "--quiet")).isZero();
    // Fresh air is asked for in the unit of the jurisdiction.
    assertThat(Files.readString(html)).contains("What is to be done").contains("m³/h");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void a_language_that_the_sheet_does_not_speak_is_wrong_use() {
    assertThat(run("sheet", survey.toString(), "--language", "xx")).isEqualTo(2);
    assertThat(err.toString()).contains("no sheet in the language xx; there is en, de");
    assertThat(folder).isDirectoryNotContaining("glob:**.pdf");
  }

  @Test
  void a_survey_with_an_error_writes_nothing() throws IOException {
    Files.writeString(survey, SURVEY.replace("floor_area: 40 m2", "floor_area: 40 s"));
    assertThat(run("sheet", survey.toString())).isEqualTo(1);
    assertThat(folder).isDirectoryNotContaining("glob:**.pdf");
  }

  private Path own(String template) throws IOException {
    Path own = Files.createDirectories(folder.resolve("own"));
    Files.writeString(own.resolve("sheet.ftlh"), template);
    return own;
  }

  @Test
  void a_template_of_ones_own_makes_the_sheet() throws IOException {
    Path own =
        own(
            """
            <#import "macros.ftlh" as m>
            <@m.document title=sheet.title head_left="Our house style" head_right="" foot="" paper=sheet.paper lang=sheet.language>
            <h1>${sheet.heading}</h1>
            </@m.document>
            """);
    Path html = folder.resolve("x.html");
    int status =
        run("sheet", survey.toString(), "--templates", own.toString(), "--html", html.toString());
    assertThat(status).as(() -> err.toString()).isZero();
    assertThat(Files.readString(html)).contains("Our house style").doesNotContain("until then");
  }

  /** The same limits as for the report. */
  @Test
  void a_template_that_asks_for_more_than_it_may_is_refused_and_nothing_is_written()
      throws IOException {
    Path own = own("<h1>${sheet.heading?no_esc}</h1>");
    assertThat(run("sheet", survey.toString(), "--templates", own.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("sheet.ftlh, line 1", "not allowed");
    own("<p>${sheet.nothing}</p>");
    assertThat(run("sheet", survey.toString(), "--templates", own.toString())).isEqualTo(2);
    own("<script>1</script>");
    assertThat(run("sheet", survey.toString(), "--templates", own.toString())).isEqualTo(2);
    String none = folder.resolve("gone").toString();
    assertThat(run("sheet", survey.toString(), "--templates", none)).isEqualTo(3);
    assertThat(folder).isDirectoryNotContaining("glob:**.pdf");
  }
}
