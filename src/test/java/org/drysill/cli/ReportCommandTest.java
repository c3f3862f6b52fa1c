package org.drysill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReportCommandTest {
  private static final String BUNGALOW = "example-surveys/owners-bungalow/survey.yaml";

  private static final String KITCHEN =
      """
      drysill: 1
      visit: {date: 2026-01-22, prepared_for: Quux}
      dwelling: {floor_area: 40 m2, jurisdiction: england}
      rooms: [{id: kitchen, use: kitchen}]
      """;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder;

  private int run(String... arguments) {
    return Main.run(
        new PrintWriter(out, true), new PrintWriter(err, true), Map.of(), false, arguments);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void every_example_becomes_a_report_that_opens_with_its_verdict(String example)
      throws IOException {
    Path pdf = folder.resolve("out.pdf");
    Path json = folder.resolve("out.json");
    Path html = folder.resolve("out.html");
    int status =
        run(
            "report",
            "example-surveys/" + example + "/survey.yaml",
            "-o",
            pdf.toString(),
            "--json",
            json.toString(),
            "--html",
            html.toString());
    assertThat(status).as(() -> err.toString()).isZero();
    assertThat(Files.readString(json)).contains("\"ventilation\"").contains("\"heat_recovery\"");
    assertThat(Files.readString(html)).contains("<svg").doesNotContain("http://localhost");
    String[] lines = out.toString().split("\\R");
    assertThat(lines).hasSize(2);
    assertThat(lines[0]).isEqualTo(pdf.toString());
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDFTextStripper first = new PDFTextStripper();
      first.setEndPage(1);
      assertThat(squeezed(first.getText(document))).contains(squeezed(lines[1]));
      assertThat(squeezed(new PDFTextStripper().getText(document)))
          .contains("1of" + document.getNumberOfPages());
    }
  }

  @Test
  void a_survey_with_a_problem_writes_nothing() throws IOException {
    Path survey = folder.resolve("survey.yaml");
    Files.writeString(survey, "drysill: 1\nrooms: []\n");
    assertThat(run("report", survey.toString())).isEqualTo(1);
    assertThat(folder.resolve("survey.pdf")).doesNotExist();
    assertThat(err.toString()).contains("error");
  }

  @Test
  void a_folder_that_cannot_be_written_ends_with_3() throws IOException {
    Path survey = Files.writeString(folder.resolve("survey.yaml"), KITCHEN);
    Path pdf = folder.resolve("missing").resolve("out.pdf");
    assertThat(run("report", survey.toString(), "-o", pdf.toString())).isEqualTo(3);
    assertThat(err.toString()).contains("cannot write");
  }

  @Test
  void an_edition_that_is_none_is_wrong_use() {
    String survey = "example-surveys/1930s-terrace/survey.yaml";
    assertThat(run("report", survey, "--edition", "tenant")).isEqualTo(2);
    assertThat(err.toString()).contains("no edition tenant", "survey, record, remediation, brief");
  }

  @Test
  void the_short_report_takes_a_template_and_a_language_of_its_readers() throws IOException {
    Path own = Files.createDirectories(folder.resolve("own-brief"));
    Files.writeString(
        own.resolve("brief.ftlh"),
        Files.readString(Path.of("templates/brief.ftlh"))
            .replace(
                "<@b.section view.verdict true/>",
                "<p>Hausstil</p><@b.section view.verdict true/>"));
    Path html = folder.resolve("brief.html");
    String survey = "example-surveys/owners-bungalow/survey.yaml";
    String pdf = folder.resolve("brief.pdf").toString();
    assertThat(
            run(
                "report",
                survey,
                "--edition",
                "brief",
                "--language",
                "de",
                "--templates",
                own.toString(),
                "-o",
                pdf,
                "--html",
                html.toString()))
        .isZero();
    assertThat(Files.readString(html)).contains("Hausstil", "lang=\"de\"", "Feuchtelast");
    assertThat(out.toString()).contains("Ob die Lüftung").doesNotContain("the air");
  }

  @Test
  void a_language_that_is_not_spoken_is_wrong_use() {
    String survey = "example-surveys/top-floor-flat/survey.yaml";
    assertThat(run("report", survey, "--edition", "brief", "--language", "fr")).isEqualTo(2);
    assertThat(err.toString()).contains("no report in the language fr", "there in en, de");
  }

  /** The edition that the survey names counts where none is asked for. */
  @Test
  void another_edition_is_written_in_English_only() {
    String survey = "example-surveys/top-floor-flat/survey.yaml";
    assertThat(run("report", survey, "--language", "de")).isEqualTo(2);
    assertThat(err.toString())
        .contains("the edition remediation is written in English only", "brief is there in en, de");
    assertThat(run("report", survey, "--edition", "record", "--language", "de")).isEqualTo(2);
    assertThat(err.toString()).contains("the edition record is written in English only");
  }

  @Test
  void a_copy_to_share_lies_beside_the_whole_report_and_has_the_edition_asked_for()
      throws IOException {
    Path survey = Files.writeString(folder.resolve("survey.yaml"), KITCHEN);
    assertThat(run("report", survey.toString(), "--redact", "--edition", "record")).isZero();
    assertThat(folder.resolve("survey.pdf")).doesNotExist();
    try (PDDocument document = Loader.loadPDF(folder.resolve("survey-share.pdf").toFile())) {
      assertThat(squeezed(new PDFTextStripper().getText(document)))
          .contains("Acopytoshare", "Housefactstokeep")
          .doesNotContain("Quux");
    }
  }

  @Test
  void the_schema_is_printed() {
    assertThat(run("schema")).isZero();
    assertThat(out.toString()).contains("\"$schema\"").contains("floor_area");
  }

  @Test
  void the_schema_of_the_results_is_printed() {
    assertThat(run("schema", "--results")).isZero();
    assertThat(out.toString()).contains("\"$schema\"", "dew_point_c", "working");
  }

  private static String squeezed(String text) {
    return text.replaceAll("[\\s\\u00a0]+", "");
  }

  @Test
  void templates_of_ones_own_change_the_page_and_travel_inside_the_report() throws IOException {
    Path own = Files.createDirectories(folder.resolve("own"));
    Path pdf = folder.resolve("own.pdf");
    Files.writeString(
        own.resolve("report.ftlh"),
        """
        <#import "macros.ftlh" as m>
        <#import "blocks.ftlh" as b>
        <@m.document title=view.title head_left="Our house style" head_right="" foot="" paper=view.paper>
        <@b.section view.verdict true/>
        <#list view.sections as s><#if s.id == "record"><@b.section s false/></#if></#list>
        </@m.document>
        """);
    int status = run("report", BUNGALOW, "--templates", own.toString(), "-o", pdf.toString());
    assertThat(status).as(() -> err.toString()).isZero();
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertThat(squeezed(new PDFTextStripper().getText(document)))
          .contains("Ourhousestyle", "templates/report.ftlh");
    }
    assertThat(run("verify", pdf.toString())).as(() -> err.toString() + out).isZero();
  }

  @Test
  void a_wrong_template_is_told_with_file_and_line_and_nothing_is_written() throws IOException {
    Path own = Files.createDirectories(folder.resolve("own"));
    Path pdf = folder.resolve("own.pdf");
    Files.writeString(own.resolve("report.ftlh"), "<html>\n${view.nothing}\n</html>");
    int status = run("report", BUNGALOW, "--templates", own.toString(), "-o", pdf.toString());
    assertThat(status).isEqualTo(ExitStatus.WRONG_USE.code());
    assertThat(err.toString()).contains("own template report.ftlh, line 2");
    assertThat(pdf).doesNotExist();
  }
}
