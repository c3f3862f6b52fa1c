package org.drysill.report.pdf.economy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SharedBeginningTest {
  private static final String HEAD = "(a running head of some length) Tj\n".repeat(4);

  @Test
  void the_lines_that_most_pages_begin_with_are_shared() {
    assertThat(SharedBeginning.of(List.of("cover\n", HEAD + "1\n", HEAD + "2\n", HEAD + "3\n")))
        .isEqualTo(HEAD);
  }

  @Test
  void short_or_different_beginnings_are_not() {
    assertThat(SharedBeginning.of(List.of("BT\n1\n", "BT\n2\n"))).isEmpty();
    assertThat(SharedBeginning.of(List.of(HEAD + "1\n"))).isEmpty();
    assertThat(SharedBeginning.of(List.of())).isEmpty();
  }
}
