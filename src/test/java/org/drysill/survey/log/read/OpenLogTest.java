package org.drysill.survey.log.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.drysill.physics.air.MoistAir;
import org.drysill.survey.log.Log;
import org.drysill.survey.log.LogContent;
import org.drysill.survey.log.LogFixtures;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * A log of an office that others published with open data (Candanedo and Feldheim 2016, Energy and
 * Buildings 112). The property {@value #PROPERTY} names the file; it is not part of this program.
 */
class OpenLogTest {
  private static final String PROPERTY = "drysill.openLog";
  private static final Path FILE = Path.of(System.getProperty(PROPERTY, "nowhere.csv"));

  /** A row of the table: temperature [°C], relative humidity [ratio], their humidity ratio. */
  private record Row(double celsius, double humidity, double ratio) {
    static Row of(CsvRecord fields) {
      return new Row(
          Double.parseDouble(fields.getField(2)),
          Double.parseDouble(fields.getField(3)) / 100,
          Double.parseDouble(fields.getField(6)));
    }

    double ours() {
      return MoistAir.humidityRatio(
          MoistAir.vapourPressurePa(celsius, humidity), MoistAir.STANDARD_PRESSURE_PA);
    }

    /** By Hyland and Wexler 1983 over water, with the constants that the authors seem to use. */
    double theirs() {
      double kelvin = celsius + 273.15;
      double pressure =
          humidity
              * Math.exp(
                  -5.8002206e3 / kelvin
                      + 1.3914993
                      - 4.8640239e-2 * kelvin
                      + 4.1764768e-5 * kelvin * kelvin
                      - 1.4452093e-8 * kelvin * kelvin * kelvin
                      + 6.5459673 * Math.log(kelvin));
      return 0.622 * pressure / (101_330 - pressure);
    }
  }

  @BeforeEach
  void the_file_is_there() {
    assumeThat(Files.exists(FILE)).isTrue();
  }

  @Test
  void a_log_with_unnamed_row_numbers_reads_whole() {
    Log log =
        new LogReader(FILE.toAbsolutePath().getParent(), LogFixtures.LIMITS)
            .read(LogFixtures.logger(FILE.getFileName().toString()), Optional.empty());
    assertThat(log.problems()).isEmpty();
    LogContent content = log.content().orElseThrow();
    assertThat(content.figures().rowsUsed()).isEqualTo(2665);
    assertThat(content.figures().medianStepS()).isEqualTo(60);
    assertThat(content.quality().notes()).isEmpty();
    assertThat(content.series().temperature().whole().mean()).isCloseTo(21.43, within(0.01));
  }

  @Test
  void our_humidity_ratio_is_theirs_but_for_the_saturation_pressure() throws IOException {
    try (CsvReader<CsvRecord> rows = CsvReader.builder().allowExtraFields(true).ofCsvRecord(FILE)) {
      List<Row> read = rows.stream().skip(1).map(Row::of).toList();
      assertThat(read).hasSize(2665);
      assertThat(read)
          .allSatisfy(r -> assertThat(r.theirs() / r.ratio()).isCloseTo(1, within(1e-9)));
      assertThat(read).allSatisfy(r -> assertThat(r.ours() / r.ratio()).isBetween(0.9989, 0.9992));
      double mean = read.stream().mapToDouble(r -> r.ours() / r.ratio()).average().orElseThrow();
      assertThat(mean).isCloseTo(1, within(0.001));
    }
  }
}
