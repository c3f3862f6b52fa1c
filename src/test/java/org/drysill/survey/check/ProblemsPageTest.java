package org.drysill.survey.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.drysill.survey.log.LogCode;
import org.drysill.survey.log.LogFlaw;
import org.drysill.yaml.ProblemCode;
import org.drysill.yaml.YamlCode;
import org.junit.jupiter.api.Test;

class ProblemsPageTest {
  private static final Path PAGE = Path.of("src/docs/problems.md");

  private static List<ProblemCode> codes() {
    return Stream.<ProblemCode[]>of(
            YamlCode.values(), SurveyCode.values(), LogCode.values(), LogFlaw.values())
        .flatMap(Stream::of)
        .toList();
  }

  @Test
  void the_page_tells_every_code_with_its_kind_and_meaning_and_no_other() throws IOException {
    List<String> rows =
        Files.readAllLines(PAGE).stream()
            .filter(line -> line.matches("\\| [A-Z]\\d{3} .*"))
            .toList();
    assertThat(rows)
        .extracting(row -> row.replaceFirst("(\\|[^|]*\\|[^|]*\\|[^|]*\\|).*", "$1"))
        .containsExactlyElementsOf(codes().stream().map(ProblemsPageTest::row).toList());
    assertThat(rows).allMatch(row -> row.matches(".*\\| \\S[^|]*\\S\\. *\\|"));
  }

  @Test
  void no_code_stands_for_two_things() {
    assertThat(codes()).extracting(ProblemCode::code).doesNotHaveDuplicates();
    assertThat(codes()).extracting(ProblemCode::meaning).doesNotHaveDuplicates();
  }

  private static String row(ProblemCode code) {
    String kind = code.severity().name().toLowerCase(Locale.ROOT);
    return "| " + code.code() + " | " + kind + " | " + code.meaning() + " |";
  }
}
