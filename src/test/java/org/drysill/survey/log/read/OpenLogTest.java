package org.drysill.survey.log.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.drysill.survey.log.Log;
import org.drysill.survey.log.LogContent;
import org.drysill.survey.log.LogFixtures;
import org.junit.jupiter.api.Test;

/** A log of an office that others published; it is named by a property, and not part of this. */
class OpenLogTest {
  private static final String PROPERTY = "drysill.openLog";

  @Test
  void an_open_log_with_unnamed_row_numbers_reads_whole() {
    Path file = Path.of(System.getProperty(PROPERTY, "nowhere.csv"));
    assumeThat(Files.exists(file)).isTrue();
    Log log =
        new LogReader(file.getParent(), LogFixtures.LIMITS)
            .read(LogFixtures.logger(file.getFileName().toString()), Optional.empty());
    assertThat(log.problems()).isEmpty();
    LogContent content = log.content().orElseThrow();
    assertThat(content.figures().rowsUsed()).isEqualTo(2665);
    assertThat(content.figures().medianStepS()).isEqualTo(60);
    assertThat(content.quality().notes()).isEmpty();
    assertThat(content.series().temperature().whole().mean()).isCloseTo(21.43, within(0.01));
  }
}
