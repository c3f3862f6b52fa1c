package org.drysill.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The file keeps what it claims, by a validator of its own: PDF/A-3a, PDF/A-3u and PDF/UA-1. */
class ConformanceTest {
  private static final byte[] PDF = Sample.pdf();

  @ParameterizedTest
  @ValueSource(strings = {"3a", "3u", "ua1"})
  void the_sample_breaks_no_rule_of(String flavour) throws IOException, InterruptedException {
    assertThat(Validator.broken(PDF, flavour)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"3a", "3u", "ua1"})
  void the_validator_can_fail(String flavour) throws IOException, InterruptedException {
    ByteArrayOutputStream plain = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      document.addPage(new PDPage());
      document.save(plain);
    }
    List<String> alone = Validator.broken(plain.toByteArray(), flavour);
    assertThat(alone).hasSizeGreaterThan(1).allMatch(said -> said.startsWith(flavour));
    // What is said of one flavour among several is what is said of it alone.
    assertThat(Validator.broken(plain.toByteArray(), "3a", "3u", "ua1"))
        .filteredOn(said -> said.startsWith(flavour))
        .containsExactlyInAnyOrderElementsOf(alone);
  }

  @Test
  void what_is_no_file_is_not_passed_over() {
    assertThatThrownBy(() -> Validator.broken(new byte[] {1}, "3a"))
        .isInstanceOf(IOException.class);
  }
}
