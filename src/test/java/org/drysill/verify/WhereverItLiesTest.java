package org.drysill.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.drysill.cli.Main;
import org.drysill.report.evidence.NotAReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A report depends on what its files say, and on nothing of the machine and the folders around. */
class WhereverItLiesTest {
  private static final String HOME =
      """
      drysill: 1
      visit: {date: 2026-01-22%s}
      dwelling: {jurisdiction: england, floor_area: 84 m2}
      rooms:
        - id: bed
          name: Schlafzimmer im Süden
          use: bedroom
          readings: [{at: 2026-01-22 10:00, temperature: 18.2 C, humidity: 63 %%}]%s
        - {id: kitchen, use: kitchen}
      """;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder;

  private void run(String... arguments) {
    int status =
        Main.run(
            new PrintWriter(out, true), new PrintWriter(err, true), Map.of(), false, arguments);
    assertThat(status).as(() -> err.toString() + out).isZero();
  }

  private static Path written(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  private static Path earlier(Path file) throws IOException {
    return written(file, HOME.formatted("", "").replace("2026", "2025").replace("63 %", "71 %"));
  }

  private static Verified verified(Path pdf) throws IOException, NotAReport {
    return Verification.of(Files.readAllBytes(pdf), Optional.empty());
  }

  @Test
  void an_earlier_survey_may_lie_in_another_folder_with_any_letters() throws Exception {
    Path home = folder.resolve("Haus am Grünen Weg, 2. Stock");
    earlier(home.resolve("vor der Dämmung (1)/Ärger.yaml"));
    Path after =
        written(
            home.resolve("danach – 日本/besuch 2.yaml"),
            HOME.formatted(", previous: \"../vor der Dämmung (1)/Ärger.yaml\"", ""));
    Path pdf = folder.resolve("out put é.pdf");
    run("report", after.toString(), "-o", pdf.toString());
    run("verify", pdf.toString());
    assertThat(out.toString()).contains("agrees with itself.", "byte for byte");
    assertThat(verified(pdf).statements())
        .noneMatch(s -> s.state() == Statement.State.NOT_COMPARED);
  }

  /** The survey names another earlier one, which a warning quotes by its path. */
  @Test
  void a_comparison_is_the_same_wherever_its_surveys_lie() throws IOException {
    byte[][] made = new byte[2][];
    String[][] places = {{"a", "a/before"}, {"b/far away/é", "c"}};
    for (int i = 0; i < places.length; i++) {
      Path after =
          written(
              folder.resolve(places[i][0]).resolve("survey.yaml"),
              HOME.formatted(", previous: other.yaml", ""));
      earlier(after.resolveSibling("other.yaml"));
      Path before = earlier(folder.resolve(places[i][1]).resolve("before.yaml"));
      Path pdf = folder.resolve(i + ".pdf");
      run("compare", before.toString(), after.toString(), "-o", pdf.toString());
      assertThat(out.toString()).contains("names another earlier survey");
      made[i] = Files.readAllBytes(pdf);
    }
    assertThat(made[1]).isEqualTo(made[0]);
  }

  @Test
  void a_log_too_large_to_bring_along_is_told_of_and_not_compared() throws Exception {
    StringBuilder log = new StringBuilder("Time,Temperature (C),Humidity (%)\n");
    LocalDateTime time = LocalDateTime.of(2025, 12, 1, 0, 0);
    for (int row = 0; row < 6_000; row++) {
      log.append(time.plusMinutes(10L * row).toString().replace('T', ' '))
          .append(String.format(Locale.ROOT, ",%.1f,%.1f", 18 + row % 9 / 10.0, 60 + row % 7 / 2.0))
          .append('\n');
    }
    // Empty lines, so that the file is large and its readings are few.
    log.append("\n".repeat(9 * 1024 * 1024 - log.length()));
    written(folder.resolve("logs/bed.csv"), log.toString());
    Path survey =
        written(
            folder.resolve("survey.yaml"),
            HOME.formatted("", "\n    logger: {file: logs/bed.csv}"));
    Path pdf = folder.resolve("survey.pdf");
    Path html = folder.resolve("survey.html");
    run("report", survey.toString(), "--html", html.toString());
    assertThat(Files.size(pdf)).isLessThan(2_000_000);
    assertThat(Files.readString(html)).contains("logs/bed.csv").contains("not inside this file");
    run("verify", pdf.toString());
    assertThat(out.toString())
        .contains("not compared  Figures and pages: files are not inside; --files gives them.")
        .contains("logs/bed.csv")
        .contains("agrees with itself in what was compared.");
    out.getBuffer().setLength(0);
    run("verify", pdf.toString(), "--files", folder.toString());
    assertThat(out.toString()).contains("agrees with itself.", "byte for byte");
  }

  /** In a process of its own, for the character set of files is settled when one starts. */
  @Test
  void neither_the_characters_nor_the_language_of_the_machine_change_a_byte() throws Exception {
    Path survey = written(folder.resolve("survey.yaml"), HOME.formatted("", ""));
    Path here = folder.resolve("here.pdf");
    run("report", survey.toString(), "-o", here.toString());
    Path there = folder.resolve("there.pdf");
    Path said = folder.resolve("said.txt");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dfile.encoding=ISO-8859-1",
                "-Duser.language=tr",
                "-Duser.country=TR",
                "-Duser.timezone=Asia/Tokyo",
                "-cp",
                System.getProperty("java.class.path"),
                "org.drysill.cli.Main",
                "report",
                survey.toString(),
                "-o",
                there.toString())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
    assertThat(process.exitValue()).as(Files.readString(said, StandardCharsets.UTF_8)).isZero();
    assertThat(Files.readAllBytes(there)).isEqualTo(Files.readAllBytes(here));
  }
}
