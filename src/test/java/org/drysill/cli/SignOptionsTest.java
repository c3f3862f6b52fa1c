package org.drysill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.drysill.report.sign.Keys;
import org.drysill.report.sign.SignatureSeen;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SignOptionsTest {
  private static final String SURVEY = "example-surveys/owners-bungalow/survey.yaml";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder;

  private int run(Map<String, String> environment, String... arguments) {
    return Main.run(
        new PrintWriter(out, true), new PrintWriter(err, true), environment, false, arguments);
  }

  private String key() throws Exception {
    Path file = folder.resolve("key.p12");
    Files.write(file, Keys.file("EC", Instant.now().minusSeconds(60)));
    return file.toString();
  }

  @Test
  void a_report_is_signed_and_verify_says_by_whom() throws Exception {
    String pdf = folder.resolve("out.pdf").toString();
    int status =
        run(
            Map.of("SECRET", Keys.PASSWORD),
            "report",
            SURVEY,
            "-o",
            pdf,
            "--sign",
            key(),
            "--sign-password-env",
            "SECRET");
    assertThat(status).as(() -> err.toString()).isZero();
    assertThat(SignatureSeen.in(Files.readAllBytes(Path.of(pdf)))).isPresent();
    assertThat(run(Map.of(), "verify", pdf)).isZero();
    assertThat(out.toString())
        .contains("Signed by CN=R. Example,O=Example Surveys", "self-signed", "byte for byte");
  }

  @Test
  void the_report_of_a_comparison_is_signed_in_the_same_way() throws Exception {
    String later = Files.writeString(folder.resolve("after.yaml"), SMALL).toString();
    String before =
        Files.writeString(folder.resolve("before.yaml"), SMALL.replace("2026", "2025")).toString();
    String pdf = folder.resolve("out.pdf").toString();
    String password = Files.writeString(folder.resolve("p.txt"), Keys.PASSWORD).toString();
    String[] arguments = {
      "compare", before, later, "-o", pdf, "--sign", key(), "--sign-password-file", password
    };
    int status = run(Map.of(), arguments);
    assertThat(status).as(() -> err.toString()).isZero();
    assertThat(SignatureSeen.in(Files.readAllBytes(Path.of(pdf)))).isPresent();
    assertThat(run(Map.of(), "verify", pdf)).as(() -> out.toString()).isZero();
    assertThat(run(Map.of(), "compare", before, later, "--sign", key())).isEqualTo(2);
    assertThat(err.toString()).contains("--sign needs -o");
  }

  private static final String SMALL =
      """
      drysill: 1
      visit: {date: 2026-01-22}
      dwelling: {jurisdiction: england, floor_area: 84 m2, address: 7 Quux Row}
      rooms: [{id: kitchen, use: kitchen}]
      """;

  @Test
  void without_its_password_nothing_is_written() throws Exception {
    String pdf = folder.resolve("out.pdf").toString();
    String key = key();
    String password = Files.writeString(folder.resolve("p.txt"), "wrong\n").toString();
    assertThat(run(Map.of(), "report", SURVEY, "-o", pdf, "--sign", key)).isEqualTo(2);
    assertThat(err.toString()).contains("nobody is there to be asked");
    assertThat(
            run(
                Map.of(),
                "report",
                SURVEY,
                "-o",
                pdf,
                "--sign",
                key,
                "--sign-password-file",
                password))
        .isEqualTo(2);
    assertThat(err.toString()).contains("cannot be opened with this password");
    assertThat(
            run(Map.of(), "report", SURVEY, "-o", pdf, "--sign", key, "--sign-password-env", "NO"))
        .isEqualTo(2);
    assertThat(err.toString()).contains("no variable NO");
    assertThat(Path.of(pdf)).doesNotExist();
  }

  @Test
  void the_first_line_of_a_file_is_a_password_and_a_person_may_answer() throws Exception {
    Path file = Files.writeString(folder.resolve("p.txt"), "one\ntwo\n");
    assertThat(Secrets.inFile(file)).containsExactly('o', 'n', 'e');
    Secrets secrets = new Secrets(Map.of(), Optional.of(question -> question.toCharArray()));
    assertThat(secrets.asked("?").orElseThrow()).containsExactly('?');
  }
}
