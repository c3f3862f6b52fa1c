package org.drysill.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The file keeps what it claims, by a validator of its own: PDF/A-3a, PDF/A-3u and PDF/UA-1. */
class ConformanceTest {
  private static final byte[] PDF = Sample.pdf();

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"3a", "3u", "ua1"})
  void the_sample_breaks_no_rule_of(String flavour) throws IOException, InterruptedException {
    Path file = Files.write(folder.resolve("sample.pdf"), PDF);
    assertThat(Validator.verdict(flavour, file)).contains("PASS " + file);
  }

  @ParameterizedTest
  @ValueSource(strings = {"3a", "ua1"})
  void the_validator_can_fail(String flavour) throws IOException, InterruptedException {
    Path file = folder.resolve("plain.pdf");
    try (org.apache.pdfbox.pdmodel.PDDocument document =
        new org.apache.pdfbox.pdmodel.PDDocument()) {
      document.addPage(new org.apache.pdfbox.pdmodel.PDPage());
      document.save(file.toFile());
    }
    assertThat(Validator.verdict(flavour, file)).contains("FAIL " + file);
  }
}
