package org.drysill.truth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The logs of the terrace say at the visit what the surveyor read there. */
class TerraceLogsTest {
  private static final Path FOLDER = Path.of("example-surveys/1930s-terrace/logs");

  @ParameterizedTest
  @CsvSource({
    "outdoors.csv, 2026-01-22 09:40, 3.2, 88",
    "outdoors.csv, 2026-01-22 11:50, 3.9, 85",
    "bathroom.csv, 2026-01-22 11:20, 18.9, 70",
    "bedroom-front.csv, 2026-01-22 10:50, 17.2, 68"
  })
  void the_log_agrees_with_the_reading(String file, String time, double celsius, double percent)
      throws IOException {
    String[] row =
        Files.readAllLines(FOLDER.resolve(file)).stream()
            .filter(line -> line.startsWith(time))
            .findFirst()
            .orElseThrow()
            .split(",", -1);
    assertThat(Double.parseDouble(row[1])).isCloseTo(celsius, within(0.4));
    assertThat(Double.parseDouble(row[2])).isCloseTo(percent, within(2.5));
  }

  @ParameterizedTest
  @CsvSource({"outdoors.csv", "bathroom.csv", "bedroom-front.csv"})
  void a_log_is_a_month_of_ten_minutes(String file) throws IOException {
    Path path = FOLDER.resolve(file);
    assertThat(Files.readAllLines(path)).hasSizeBetween(4400, 4466);
    assertThat(Files.size(path)).isLessThan(300_000);
  }
}
