package org.drysill.survey.log.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.drysill.survey.CycleColumns;
import org.drysill.survey.CycleLogger;
import org.drysill.survey.TemperatureUnit;
import org.drysill.survey.log.CycleLog;
import org.drysill.survey.log.CycleSamples;
import org.drysill.survey.log.LogCode;
import org.drysill.survey.log.LogFile.Account;
import org.drysill.survey.log.LogFixtures;
import org.drysill.survey.log.LogFlaw;
import org.drysill.survey.log.LogQuantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CycleLogReaderTest {
  private static final String HEAD = "Time,Indoor (C),Outdoor (C),Supply (C),Flow (l/s)\n";

  @TempDir private Path folder;

  private static CycleLogger logger(Optional<CycleColumns> columns) {
    return new CycleLogger(
        "cycle.csv",
        columns,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static CycleColumns named(String supply) {
    return new CycleColumns(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(supply),
        Optional.empty(),
        Optional.empty());
  }

  private CycleLog read(String text) throws IOException {
    return read(text, logger(Optional.empty()));
  }

  private CycleLog read(String text, CycleLogger logger) throws IOException {
    Files.writeString(folder.resolve(logger.file()), text);
    return new CycleLogReader(folder, LogFixtures.LIMITS).read(logger, Optional.empty());
  }

  private static CycleSamples samples(CycleLog log) {
    return log.samples().orElseThrow();
  }

  private static double[] supply(CycleLog log) {
    return samples(log).column(LogQuantity.SUPPLY_TEMPERATURE).orElseThrow();
  }

  private static long count(CycleLog log, LogFlaw flaw) {
    return log.account().orElseThrow().quality().count(flaw);
  }

  private static String rows(int count) {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < count; i++) {
      rows.append(
          "2026-01-22 10:%02d:%02d,20.1,3.2,%d.5,11%n".formatted(i / 60, i % 60, 12 + i % 5));
    }
    return rows.toString();
  }

  @Test
  void seconds_are_kept_and_columns_found_by_their_words() throws IOException {
    CycleLog log = read(HEAD + rows(30));
    assertThat(log.problems()).isEmpty();
    assertThat(log.file()).isEqualTo("cycle.csv");
    assertThat(log.sha256()).hasSize(64);
    assertThat(samples(log).size()).isEqualTo(30);
    assertThat(samples(log).seconds()).startsWith(0, 1, 2).endsWith(29);
    assertThat(supply(log)).startsWith(12.5, 13.5, 14.5);
    assertThat(samples(log).column(LogQuantity.FLOW).orElseThrow()).containsOnly(11);
    assertThat(samples(log).column(LogQuantity.EXHAUST_TEMPERATURE)).isEmpty();
    Account account = log.account().orElseThrow();
    assertThat(account.figures().rowsRead()).isEqualTo(30);
    assertThat(account.figures().medianStepS()).isEqualTo(1);
    assertThat(account.layout().columns())
        .containsEntry("time", "Time")
        .containsEntry("supply temperature", "Supply (C)")
        .doesNotContainKey("temperature");
    assertThat(account.quality().notes()).isEmpty();
  }

  @Test
  void other_marks_tongues_and_units_are_recognised() throws IOException {
    CycleLog log =
        read(
            """
            Zeit;Raumluft °F;Außenluft °F;Zuluft °F;Fortluft °F
            22.01.2026 10:00:00;68,0;41,0;59,0;50,0
            22.01.2026 10:00:02;68,0;41,0;50,0;50,0
            """);
    assertThat(supply(log)).containsExactly(15, 10);
    assertThat(samples(log).column(LogQuantity.INDOOR_TEMPERATURE).orElseThrow()).containsOnly(20);
    assertThat(log.account().orElseThrow().layout().temperatureUnit())
        .isEqualTo(TemperatureUnit.FAHRENHEIT);
  }

  @Test
  void where_one_column_is_named_no_other_is_guessed() throws IOException {
    CycleLog log =
        read(
            "Time,Probe 1,Indoor\n2026-01-22 10:00:00,12.5,20\n2026-01-22 10:00:01,12.4,20\n",
            logger(Optional.of(named("probe 1"))));
    assertThat(supply(log)).containsExactly(12.5, 12.4);
    assertThat(samples(log).column(LogQuantity.INDOOR_TEMPERATURE)).isEmpty();
  }

  @Test
  void every_oddity_is_counted_with_its_line() throws IOException {
    CycleLog log =
        read(
            HEAD
                + "2026-01-22 10:00:00,20.1,3.2,12.5,11\n"
                + "2026-01-22 10:00:01,20.1,3.2,ERR,11\n"
                + "2026-01-22 10:00:02,20.1,-99,12.3,11\n"
                + "nonsense,20.1,3.2,12.3,11\n"
                + "2026-01-22 10:00:04,20.1\n"
                + "2026-01-22 10:00:05,20.1,3.2,35.0,11\n"
                + "2026-01-22 10:00:06,20.1,3.2,12.2,11\n"
                + "2026-01-22 10:00:06,20.1,3.2,12.1,11\n"
                + "2026-01-22 10:00:03,20.1,3.2,12.4,11\n"
                + "2026-01-22 10:00:07,,,,\n"
                + "2026-01-22 10:00:30,20.1,3.2,12.0,11\n"
                + "2026-01-22 10:00:31,20.1,3.2,11.9,11\n");
    assertThat(count(log, LogFlaw.NOT_A_NUMBER)).isEqualTo(1);
    assertThat(count(log, LogFlaw.IMPOSSIBLE)).isEqualTo(1);
    assertThat(count(log, LogFlaw.UNREADABLE_TIME)).isEqualTo(1);
    assertThat(count(log, LogFlaw.TOO_FEW_FIELDS)).isEqualTo(1);
    assertThat(count(log, LogFlaw.SPIKE)).isEqualTo(1);
    assertThat(count(log, LogFlaw.DUPLICATE_TIME)).isEqualTo(1);
    assertThat(count(log, LogFlaw.OUT_OF_ORDER)).isEqualTo(1);
    assertThat(count(log, LogFlaw.NO_VALUE)).isEqualTo(1);
    assertThat(count(log, LogFlaw.GAP)).isEqualTo(1);
    assertThat(
            log.account()
                .orElseThrow()
                .quality()
                .of(LogFlaw.NOT_A_NUMBER, LogQuantity.SUPPLY_TEMPERATURE)
                .orElseThrow()
                .lines())
        .containsExactly(3L);
    assertThat(supply(log))
        .containsExactly(12.5, Double.NaN, 12.3, 12.4, Double.NaN, 12.1, 12.0, 11.9);
    assertThat(log.account().orElseThrow().figures().gapS()).isPositive();
  }

  @Test
  void a_log_without_end_is_read_to_a_bound_and_the_rest_is_counted() throws IOException {
    StringBuilder text = new StringBuilder("Time,Supply\n");
    for (int i = 0; i < CycleRows.MOST + 7; i++) {
      text.append(1_769_000_000L + i).append(",12.").append(i % 10).append('\n');
    }
    CycleLog log = read(text.toString());
    assertThat(samples(log).size()).isEqualTo(CycleRows.MOST);
    assertThat(count(log, LogFlaw.BEYOND)).isEqualTo(7);
    assertThat(log.account().orElseThrow().quality().of(LogFlaw.BEYOND).get(0).lines().get(0))
        .isEqualTo(CycleRows.MOST + 2L);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Time,Temperature;2026-01-22 10:00:00,12 | L005",
        "Time,Supply 1,Supply 2;2026-01-22 10:00:00,12,13 | L006",
        "Time,Outside,Outdoor,Supply;2026-01-22 10:00:00,1,2,13 | L006",
        "Nothing at all | L003",
        "Time,Supply;2026-01-22 10:00:00,999 | L009",
        "Time,Supply;1970-01-01 10:00:00,12 | L008",
        "Time,Supply;03/04/2026 10:00:00,12 | L007"
      })
  void what_cannot_be_used_says_why(String text, String code) throws IOException {
    CycleLog log = read(text.replace(";", "\n") + "\n");
    assertThat(log.samples()).isEmpty();
    assertThat(log.account()).isEmpty();
    assertThat(log.problems()).hasSize(1);
    assertThat(log.problems().get(0).code()).isEqualTo(code);
  }

  @Test
  void a_column_that_the_file_lacks_is_told_with_the_nearest() throws IOException {
    CycleLog log = read(HEAD + rows(3), logger(Optional.of(named("Suply (C)"))));
    assertThat(log.problems().get(0).code()).isEqualTo(LogCode.NO_SUCH_COLUMN.code());
    assertThat(log.problems().get(0).suggestion()).contains("Supply (C)");
  }

  @Test
  void two_columns_of_one_name_are_refused() throws IOException {
    CycleLog log =
        read("Time,Probe,Probe\n2026-01-22 10:00:00,12,13\n", logger(Optional.of(named("Probe"))));
    assertThat(log.problems().get(0).code()).isEqualTo(LogCode.SEVERAL_COLUMNS.code());
  }

  @Test
  void a_row_that_is_never_closed_ends_the_log() throws IOException {
    CycleLog log = read(HEAD + rows(5) + "\"2026-01-22 10:00:09,20,3,12,11\n" + "x".repeat(70_000));
    assertThat(samples(log).size()).isEqualTo(5);
    assertThat(log.problems().get(0).code()).isEqualTo(LogCode.BROKEN_QUOTES.code());
  }

  @Test
  void what_is_no_file_or_no_text_is_refused() throws IOException {
    CycleLog gone =
        new CycleLogReader(folder, LogFixtures.LIMITS)
            .read(logger(Optional.empty()), Optional.empty());
    assertThat(gone.problems().get(0).code()).isEqualTo(LogCode.UNREADABLE.code());
    assertThat(gone.sha256()).isEmpty();
    CycleLog binary = read("PK\u0003\u0004\u0001\u0002\u0001\u0001\u0002");
    assertThat(binary.problems().get(0).code()).isEqualTo(LogCode.NOT_TEXT.code());
  }
}
