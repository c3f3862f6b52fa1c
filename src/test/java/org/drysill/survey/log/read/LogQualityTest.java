package org.drysill.survey.log.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drysill.survey.log.LogFixtures.in;
import static org.drysill.survey.log.LogFixtures.logger;
import static org.drysill.survey.log.LogFixtures.read;

import java.nio.file.Path;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drysill.survey.log.LogContent;
import org.drysill.survey.log.LogFlaw;
import org.drysill.survey.log.LogNote;
import org.drysill.survey.log.LogQuantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is odd about rows is counted, with its lines, and treated as it says. */
class LogQualityTest {
  private static final String HEAD = "Date,Temp,RH,CO2\n";

  @TempDir private Path folder;

  private LogContent content(String text) {
    return read(folder, text).content().orElseThrow();
  }

  private LogContent content(String text, String zone) {
    return read(folder, text, in(zone, logger("log.csv"))).content().orElseThrow();
  }

  /** Ten-minute rows from ten o'clock, in which something stands in the place of one of them. */
  private static String rows(int count, int odd, String instead) {
    return HEAD + lines(count, i -> i == odd ? instead : row(i));
  }

  private static String row(int i) {
    return "2026-01-%02d %02d:%02d,%.1f,%d,700"
        .formatted(
            22 + (600 + 10 * i) / 1440,
            (10 + i / 6) % 24,
            i % 6 * 10,
            19 + 0.1 * (i % 7),
            50 + i % 3);
  }

  private static String lines(int count, IntFunction<String> row) {
    return IntStream.range(0, count).mapToObj(row).collect(Collectors.joining("\n", "", "\n"));
  }

  private static LogNote only(LogContent content, LogFlaw flaw) {
    assertThat(content.quality().notes()).extracting(LogNote::flaw).containsOnly(flaw);
    return content.quality().notes().get(0);
  }

  @Test
  void a_leap_of_forty_degrees_for_one_row_is_a_spike_and_not_used() {
    LogContent log = content(rows(12, 5, "2026-01-22 10:50,59.5,51,700"));
    LogNote spike = only(log, LogFlaw.SPIKE);
    assertThat(spike.quantity()).contains(LogQuantity.TEMPERATURE);
    assertThat(spike.lines()).containsExactly(7L);
    assertThat(log.series().temperature().whole().high()).isLessThan(20);
    assertThat(log.figures().rowsUsed()).isEqualTo(12);
  }

  @Test
  void a_step_that_lasts_is_no_spike() {
    String text = HEAD + lines(12, i -> i < 6 ? row(i) : row(i).replace(",19.", ",39."));
    assertThat(content(text).quality().notes()).isEmpty();
  }

  @Test
  void rows_of_a_clock_that_was_not_set_are_not_used() {
    LogContent log = content(rows(12, 0, "1970-01-01 00:00,19,50,700"));
    assertThat(only(log, LogFlaw.CLOCK_NOT_SET).lines()).containsExactly(2L);
    assertThat(log.figures().first()).isEqualTo("2026-01-22T10:10:00Z");
    assertThat(log.series().size()).isLessThan(20);
  }

  @Test
  void a_clock_that_is_set_late_leaves_the_rows_after_it() {
    String unset =
        lines(2000, i -> "1970-01-01 %02d:%02d,19,50,700".formatted(i / 60 % 24, i % 60));
    LogContent log = content(HEAD + unset + lines(12, LogQualityTest::row));
    assertThat(only(log, LogFlaw.CLOCK_NOT_SET).count()).isEqualTo(2000);
    assertThat(log.figures().rowsUsed()).isEqualTo(12);
  }

  @Test
  void rows_of_a_clock_that_was_reset_are_not_used() {
    LogContent log = content(rows(12, 6, "2015-01-01 00:00,19,50,700"));
    assertThat(only(log, LogFlaw.FAR_IN_TIME).count()).isEqualTo(1);
    assertThat(log.figures().rowsUsed()).isEqualTo(11);
  }

  @Test
  void values_that_cannot_be_and_words_for_numbers_leave_the_others_of_the_row() {
    LogContent cold = content(rows(12, 5, "2026-01-22 10:50,-127,51,700"));
    assertThat(only(cold, LogFlaw.IMPOSSIBLE).quantity()).contains(LogQuantity.TEMPERATURE);
    assertThat(cold.series().humidity().whole().seconds()).isEqualTo(12 * 600);
    assertThat(cold.series().vapourPressure().whole().seconds()).isEqualTo(11 * 600);
    LogContent word = content(rows(12, 5, "2026-01-22 10:50,19.0,51,Err 7"));
    assertThat(only(word, LogFlaw.NOT_A_NUMBER).quantity()).contains(LogQuantity.CO2);
    assertThat(only(content(rows(12, 5, "2026-01-22 10:50,,,")), LogFlaw.NO_VALUE).count())
        .isEqualTo(1);
  }

  @Test
  void humidity_above_saturation_by_the_error_of_a_sensor_is_saturation() {
    LogContent fog = content(HEAD + lines(12, i -> row(i).replaceFirst(",5\\d,", ",103,")));
    assertThat(fog.series().humidity().whole().high()).isEqualTo(1);
    assertThat(fog.quality().count(LogFlaw.ABOVE_SATURATION)).isEqualTo(12);
    assertThat(fog.quality().count(LogFlaw.SATURATED)).isEqualTo(12);
    LogContent more = content(rows(12, 5, "2026-01-22 10:50,19,120,700"));
    assertThat(only(more, LogFlaw.IMPOSSIBLE).quantity()).contains(LogQuantity.HUMIDITY);
  }

  @Test
  void rows_that_cannot_be_read_are_told_apart() {
    assertThat(only(content(rows(12, 5, "yesterday,19,50,700")), LogFlaw.UNREADABLE_TIME).lines())
        .containsExactly(7L);
    assertThat(only(content(rows(12, 5, "2026-01-22 10:50")), LogFlaw.TOO_FEW_FIELDS).lines())
        .containsExactly(7L);
    assertThat(
            only(content(rows(12, 5, "2026-01-22 10:50;19;50;700")), LogFlaw.TOO_FEW_FIELDS)
                .count())
        .isEqualTo(1);
    assertThat(only(content(rows(12, 5, "\u0001\u0002\u0000,19,50,7")), LogFlaw.BINARY).count())
        .isEqualTo(1);
    String cut = rows(12, 11, "2026-01-22 11").strip();
    assertThat(only(content(cut), LogFlaw.TRUNCATED).lines()).containsExactly(13L);
  }

  @Test
  void one_lost_reading_is_bridged_and_an_outage_is_a_gap() {
    String one = HEAD + lines(12, i -> i == 5 ? "" : row(i));
    assertThat(content(one).quality().notes()).isEmpty();
    assertThat(content(one).figures().gapS()).isZero();
    LogContent log = content(HEAD + lines(24, i -> i >= 5 && i < 15 ? "" : row(i)));
    LogNote gap = only(log, LogFlaw.GAP);
    // The last reading before it holds for three steps of ten minutes.
    assertThat(gap.seconds()).isEqualTo(11 * 600 - 1800);
    assertThat(log.figures().gapS()).isEqualTo(gap.seconds());
    assertThat(log.figures().coveredS()).isEqualTo(24 * 600 - gap.seconds());
    assertThat(log.series().temperature().isKnown(12)).isFalse();
  }

  @Test
  void a_log_that_changes_its_step_has_no_gaps() {
    String text =
        HEAD
            + lines(60, i -> "2026-01-22 10:%02d,19.%d,50,700".formatted(i, i % 9))
            + lines(
                40,
                i -> "2026-01-22 %d:%02d,19.%d,50,700".formatted(11 + i / 4, i % 4 * 15, i % 9));
    LogContent log = content(text);
    assertThat(log.quality().of(LogFlaw.GAP)).hasSizeLessThanOrEqualTo(1);
    assertThat(log.figures().gapS()).isLessThan(900);
  }

  @Test
  void a_sensor_that_keeps_its_value_for_days_is_told_and_used() {
    LogContent log = content(HEAD + lines(200, i -> row(i).replaceFirst(",5\\d,", ",55,")));
    assertThat(log.quality().of(LogFlaw.STUCK, LogQuantity.HUMIDITY).orElseThrow().seconds())
        .isEqualTo(199 * 600);
    assertThat(log.series().humidity().whole().mean()).isEqualTo(0.55);
  }

  @Test
  void two_blocks_that_overlap_are_put_together_and_told() {
    String text = HEAD + lines(24, LogQualityTest::row) + lines(24, i -> row(i + 12));
    LogContent log = content(text);
    assertThat(log.quality().count(LogFlaw.OVERLAP)).isEqualTo(1);
    assertThat(log.quality().count(LogFlaw.DUPLICATE_TIME)).isEqualTo(12);
    assertThat(log.figures().coveredS()).isEqualTo(36 * 600);
    LogContent whole = content(HEAD + lines(36, LogQualityTest::row));
    assertThat(log.series().temperature().whole()).isEqualTo(whole.series().temperature().whole());
  }

  @Test
  void a_row_out_of_order_is_put_into_its_place() {
    String text = HEAD + lines(12, i -> row(i == 5 ? 6 : i == 6 ? 5 : i));
    LogContent log = content(text);
    assertThat(only(log, LogFlaw.OUT_OF_ORDER).lines()).containsExactly(8L);
    assertThat(log.figures().coveredS()).isEqualTo(12 * 600);
  }

  private static String night(int fromMinute, int toMinute, String date) {
    return IntStream.iterate(fromMinute, m -> m < toMinute, m -> m + 10)
        .mapToObj(m -> "%s %02d:%02d,19.%d,50,700".formatted(date, m / 60, m % 60, m / 10 % 9))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  @Test
  void the_hour_that_comes_twice_in_autumn_is_two_hours() {
    String date = "2025-10-26";
    String text = HEAD + night(0, 120, date) + night(60, 240, date);
    LogContent log = content(text, "Europe/London");
    assertThat(log.quality().count(LogFlaw.REPEATED_HOUR)).isEqualTo(12);
    assertThat(log.quality().count(LogFlaw.DUPLICATE_TIME)).isZero();
    assertThat(log.figures().first()).isEqualTo("2025-10-25T23:00:00Z");
    assertThat(log.figures().last()).isEqualTo("2025-10-26T03:50:00Z");
    assertThat(log.figures().gapS()).isZero();
    LogContent without = content(text, "+00:00");
    assertThat(without.quality().count(LogFlaw.CLOCK_SET_BACK)).isEqualTo(1);
    assertThat(without.quality().count(LogFlaw.DUPLICATE_TIME)).isEqualTo(6);
  }

  @Test
  void the_hour_that_is_skipped_in_spring_is_no_gap() {
    String date = "2026-03-29";
    String skipped = HEAD + night(0, 60, date) + night(120, 240, date);
    LogContent log = content(skipped, "Europe/London");
    assertThat(log.quality().notes()).isEmpty();
    assertThat(log.figures().gapS()).isZero();
    LogContent fixed = content(skipped, "+00:00");
    assertThat(fixed.quality().count(LogFlaw.CLOCK_SET_FORWARD)).isEqualTo(1);
    LogContent stayed = content(HEAD + night(0, 240, date), "Europe/London");
    assertThat(stayed.quality().count(LogFlaw.SKIPPED_HOUR)).isEqualTo(6);
  }

  @Test
  void a_quotation_mark_that_is_never_closed_ends_the_reading_there() {
    StringBuilder text = new StringBuilder("\"Date\",Temp,RH\n");
    for (int i = 0; i < 6000; i++) {
      text.append(i == 100 ? "\"2026-01-22 10:50,19,50\n" : row(i % 80) + "\n");
    }
    var log = read(folder, text.toString());
    assertThat(log.content().orElseThrow().figures().rowsUsed()).isPositive();
    assertThat(log.problems()).extracting(p -> p.place().line()).containsExactly(102);
    assertThat(log.sha256()).hasSize(64);
  }
}
