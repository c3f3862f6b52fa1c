package org.drysill.survey.log.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Instant;
import org.drysill.survey.log.Log;
import org.drysill.survey.log.LogContent;
import org.drysill.survey.log.LogFixtures;
import org.drysill.survey.log.LoggedSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogReaderTest {
  @TempDir private Path folder;

  private LogContent content(String text) {
    Log log = LogFixtures.read(folder, text);
    assertThat(log.problems()).isEmpty();
    return log.content().orElseThrow();
  }

  @Test
  void a_plain_log_becomes_bins_of_time_with_means_that_are_weighted_by_time() {
    LogContent log =
        content(
            """
            Date,Temp,RH,CO2
            2026-01-21 00:00,18,60,800
            2026-01-21 00:05,20,50,
            2026-01-21 00:10,20,50,600
            """);
    LoggedSeries series = log.series();
    assertThat(series.binSeconds()).isEqualTo(300);
    assertThat(series.size()).isEqualTo(3);
    assertThat(Instant.ofEpochSecond(series.beginEpochS(0))).isEqualTo("2026-01-21T00:00:00Z");
    assertThat(series.temperature().mean(0)).isEqualTo(18);
    assertThat(series.humidity().mean(1)).isEqualTo(0.5);
    assertThat(series.co2().isKnown(1)).isFalse();
    assertThat(series.co2().mean(1)).isNaN();
    assertThat(series.temperature().whole().mean()).isCloseTo(58.0 / 3, within(1e-12));
    assertThat(series.vapourPressure().mean(0)).isCloseTo(1237.3, within(1.0));
    assertThat(log.figures().rowsUsed()).isEqualTo(3);
    assertThat(log.figures().coveredS()).isEqualTo(900);
    assertThat(log.figures().gapS()).isZero();
  }
}
