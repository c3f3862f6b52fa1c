package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.Drysill;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A report can be sent by mail: sizes are the same wherever it is made with one version of Java.
 */
class ReportSizeTest {
  private static final Path TERRACE = Path.of("example-surveys", "1930s-terrace");

  /** With 60 pages it takes 562,000, deflated as usual 619,000. */
  private static final int MOST = 600_000;

  @Test
  void the_terrace_without_photographs_keeps_small(@TempDir Path folder) throws IOException {
    try (Stream<String> lines = Files.lines(TERRACE.resolve("survey.yaml"))) {
      Files.writeString(
          folder.resolve("survey.yaml"),
          lines
              .filter(line -> !line.strip().startsWith("photos:"))
              .collect(Collectors.joining("\n", "", "\n")));
    }
    Path logs = Files.createDirectory(folder.resolve("logs"));
    try (Stream<Path> files = Files.list(TERRACE.resolve("logs"))) {
      for (Path file : files.toList()) {
        Files.copy(file, logs.resolve(file.getFileName()));
      }
    }
    byte[] pdf = Drysill.report(folder.resolve("survey.yaml")).report().orElseThrow().pdf();
    assertThat(pdf.length).isLessThan(MOST);
  }
}
