package org.drysill.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ViewGuideTest {
  @Test
  void the_guide_lists_what_a_template_can_see() throws IOException {
    assertThat(Files.readString(Path.of("src/docs/guides/own-templates.md")))
        .contains(ViewGuide.text());
  }
}
