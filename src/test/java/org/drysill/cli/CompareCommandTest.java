package org.drysill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {
  private static final String BEFORE = "example-surveys/top-floor-flat/before/survey.yaml";
  private static final String AFTER = "example-surveys/top-floor-flat/survey.yaml";
  private static final String SMALL =
      """
      drysill: 1
      visit: {date: 2026-01-22}
      dwelling: {jurisdiction: england, floor_area: 84 m2}
      rooms:
        - {id: kitchen, use: kitchen}
      """;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder;

  private int run(String... arguments) {
    return Main.run(
        new PrintWriter(out, true), new PrintWriter(err, true), Map.of(), false, arguments);
  }

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  @Test
  void a_table_in_words_says_of_every_change_whether_it_is_shown() {
    assertThat(run("compare", BEFORE, AFTER)).isZero();
    assertThat(err.toString()).isEmpty();
    assertThat(out.toString())
        .contains("11 February 2025", "29 January 2026", "Relative humidity, %")
        .containsPattern(
            "Living room +64 \\(18.9 °C\\) +50 \\(19.6 °C\\) +−14 points \\(a fifth less\\) +fell")
        .containsPattern("Kitchen fan, kitchen +– \\(not there\\) .*not shown: at one visit only")
        .containsPattern("Bathroom fan, bathroom .*\\+3.7 +rose")
        .contains("Compared are the readings of both visits.")
        .contains("Readings of two moments cannot prove a lasting change")
        .doesNotContain("names no earlier", "names another", "Optional", "\u00a0", "\u001b");
  }

  @Test
  void the_other_way_round_the_dates_are_wrong_and_the_place_is_told() {
    assertThat(run("compare", AFTER, BEFORE)).isEqualTo(1);
    assertThat(err.toString()).contains("before/survey.yaml:6", "S013", "1 error");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void errors_of_both_surveys_are_told_with_their_places() throws IOException {
    String before = file("before.yaml", SMALL.replace("use: kitchen", "use: kitschen"));
    String after = file("after.yaml", SMALL.replace("84 m2", "84 kg"));
    assertThat(run("compare", before, after, "-o", folder.resolve("out.pdf").toString()))
        .isEqualTo(1);
    assertThat(err.toString()).contains("before.yaml:5", "after.yaml:3", "2 errors");
    assertThat(folder.resolve("out.pdf")).doesNotExist();
    assertThat(run("compare", folder.resolve("gone.yaml").toString(), after)).isEqualTo(1);
    assertThat(err.toString()).contains("gone.yaml").contains("Y001");
  }

  @Test
  void the_brief_edition_is_written_in_german_and_is_said_to_leave_out_what_changed()
      throws IOException {
    String before = file("before.yaml", SMALL.replace("2026-01-22", "2025-02-11"));
    String after = file("after.yaml", SMALL);
    String html = folder.resolve("out.html").toString();
    assertThat(run("compare", before, after, "--html", html, "--language", "de")).isEqualTo(2);
    assertThat(err.toString()).contains("the edition survey is written in English only");
    assertThat(out.toString()).isEmpty();
    String[] german = {
      "compare", before, after, "--html", html, "--edition", "brief", "--language", "de"
    };
    assertThat(run(german)).isZero();
    assertThat(out.toString()).contains("The edition brief tells the later visit alone");
    assertThat(Files.readString(Path.of(html)))
        .contains("lang=\"de\"", "22. Januar 2026")
        .doesNotContain("11. Februar 2025");
  }

  @Test
  void wrong_use_ends_with_2() {
    assertThat(run("compare", AFTER)).isEqualTo(2);
    assertThat(run("compare", AFTER, AFTER)).isEqualTo(2);
    assertThat(err.toString()).contains("<after.yaml>", "before and after are the same file");
  }

  @Test
  void a_later_survey_that_names_none_or_another_is_compared_and_told() throws IOException {
    String before = file("before.yaml", SMALL.replace("2026-01-22", "2025-02-11"));
    assertThat(run("compare", before, file("after.yaml", SMALL))).isZero();
    assertThat(out.toString())
        .contains("names no earlier survey; it is compared with " + before)
        .contains("One home? The address is not stated in both surveys")
        .contains("Nothing was read or seen at both visits that could be compared.");
    String other =
        file("other.yaml", SMALL.replace("2026-01-22", "2026-01-22, previous: gone.yaml"));
    assertThat(run("compare", before, other, "--verbose")).isZero();
    assertThat(out.toString()).contains("names another earlier survey");
    assertThat(err.toString()).contains("other.yaml:2", "S039");
  }

  @Test
  void what_is_not_shown_is_told_with_the_criterion_and_its_limit() throws IOException {
    String read =
        SMALL
            .replace("rooms:", "outdoor_readings: [{temperature: 4 C, humidity: 80 %}]\nrooms:")
            .replace(
                "use: kitchen}", "use: kitchen, readings: [{temperature: 19 C, humidity: 70 %}]}");
    String before = file("before.yaml", read.replace("2026-01-22", "2025-02-11"));
    String after = file("after.yaml", read.replace("4 C", "11 C").replace("70 %", "50 %"));
    assertThat(run("compare", before, after)).isZero();
    assertThat(out.toString())
        .contains("further apart than the 5 K up to which weather counts as alike")
        .containsPattern("Kitchen .*not shown: weather too unlike");
  }

  @Test
  void quiet_says_nothing() {
    assertThat(run("compare", BEFORE, AFTER, "--quiet")).isZero();
    assertThat(out.toString()).isEmpty();
  }

  /** The later survey names nothing here, and its report has the change all the same. */
  @Test
  void the_report_and_the_results_of_the_later_visit_are_written_with_the_change()
      throws IOException {
    String later = Files.readString(Path.of(AFTER)).replace("  previous: before/survey.yaml\n", "");
    Path photo = Path.of(AFTER).resolveSibling("photos/bedroom-corner.jpg");
    Files.createDirectories(folder.resolve("photos"));
    Files.copy(photo, folder.resolve("photos").resolve(photo.getFileName()));
    Path pdf = folder.resolve("out.pdf");
    Path json = folder.resolve("out.json");
    int status =
        run(
            "compare",
            BEFORE,
            file("after.yaml", later),
            "-o",
            pdf.toString(),
            "--json",
            json.toString());
    assertThat(status).as(() -> err.toString()).isZero();
    assertThat(out.toString())
        .contains("names no earlier survey")
        .endsWith(pdf + System.lineSeparator());
    assertThat(Files.size(pdf)).isPositive();
    assertThat(Files.readString(json)).contains("\"same_home\"", "\"from_indoors");
  }

  @Test
  void the_report_takes_an_edition_and_may_be_a_copy_to_share() throws IOException {
    String address = "dwelling: {address: 7 Quux Row, ";
    String small = SMALL.replace("dwelling: {", address);
    String before = file("before.yaml", small.replace("2026-01-22", "2025-02-11"));
    String after = file("after.yaml", small);
    Path html = folder.resolve("out.html");
    String[] asked = {"compare", before, after, "--html", html.toString(), "--edition", "record"};
    assertThat(run(asked)).as(() -> err.toString()).isZero();
    assertThat(Files.readString(html)).contains("7 Quux Row", "House facts to keep");
    Path pdf = folder.resolve("share.pdf");
    String[] share = {
      "compare", before, after, "--redact", "-o", pdf.toString(), "--html", html.toString()
    };
    assertThat(run(share)).as(() -> err.toString()).isZero();
    assertThat(Files.readString(html)).contains("opy to share").doesNotContain("Quux");
    assertThat(new String(Files.readAllBytes(pdf), StandardCharsets.ISO_8859_1))
        .doesNotContain("Quux");
  }

  @Test
  void wishes_of_a_report_that_nobody_asks_for_are_wrong_use() throws IOException {
    String before = file("before.yaml", SMALL.replace("2026-01-22", "2025-02-11"));
    String after = file("after.yaml", SMALL);
    assertThat(run("compare", before, after, "--edition", "record")).isEqualTo(2);
    assertThat(err.toString()).contains("ask for it with -o or --html");
    String pdf = folder.resolve("out.pdf").toString();
    assertThat(run("compare", before, after, "--edition", "novel", "-o", pdf)).isEqualTo(2);
    assertThat(err.toString()).contains("no edition novel");
    String none = folder.resolve("gone").toString();
    assertThat(run("compare", before, after, "--templates", none, "-o", pdf)).isEqualTo(3);
    assertThat(folder.resolve("out.pdf")).doesNotExist();
  }

  @Test
  void a_folder_that_cannot_be_written_ends_with_3() throws IOException {
    String before = file("before.yaml", SMALL.replace("2026-01-22", "2025-02-11"));
    String after = file("after.yaml", SMALL);
    Path json = folder.resolve("missing").resolve("out.json");
    assertThat(run("compare", before, after, "--json", json.toString())).isEqualTo(3);
    assertThat(err.toString()).contains("cannot write");
  }
}
