package org.drysill.survey.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** What holds for every series and every log. */
class LogProperties {
  private static final long BEGIN_MS = Instant.parse("2026-01-22T10:03:20Z").toEpochMilli();

  private static SeriesBuilder filled(long seed, int readings, int mostBins) {
    SeriesBuilder builder = new SeriesBuilder(300, mostBins);
    Random dice = new Random(seed);
    long at = BEGIN_MS;
    for (int i = 0; i < readings; i++) {
      long hold = 1000L * (1 + dice.nextInt(2000));
      double ppm = dice.nextInt(4) == 0 ? Double.NaN : 400 + 1000 * dice.nextDouble();
      builder.add(at, at + hold, 10 + 15 * dice.nextDouble(), 0.3 + 0.6 * dice.nextDouble(), ppm);
      at += hold + (dice.nextInt(10) == 0 ? 10_000_000 : 0);
    }
    return builder;
  }

  @Property(tries = 100)
  void merging_bins_keeps_every_mean(@ForAll @LongRange(min = 0, max = 1 << 20) long seed) {
    LoggedSeries fine = filled(seed, 300, 1 << 14).build();
    SeriesBuilder coarse = filled(seed, 300, 64);
    LoggedSeries merged = coarse.build();
    assertThat(merged.size()).isLessThanOrEqualTo(64);
    assertThat(merged.binSeconds()).isGreaterThan(fine.binSeconds());
    same(fine.temperature().whole(), merged.temperature().whole());
    same(fine.vapourPressure().whole(), merged.vapourPressure().whole());
    for (int bin = 0; bin < merged.size(); bin++) {
      sameBin(fine, merged, bin);
    }
  }

  private static void sameBin(LoggedSeries fine, LoggedSeries merged, int bin) {
    double seconds = 0;
    double sum = 0;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < fine.size(); i++) {
      boolean within = merged.binAt(fine.beginEpochS(i)).orElse(-1) == bin;
      if (within && fine.vapourContent().isKnown(i)) {
        seconds += fine.vapourContent().seconds(i);
        sum += fine.vapourContent().seconds(i) * fine.vapourContent().mean(i);
        high = Math.max(high, fine.humidity().high(i));
      }
    }
    assertThat(merged.vapourContent().isKnown(bin)).isEqualTo(seconds > 0);
    assertThat(merged.vapourContent().seconds(bin)).isCloseTo(seconds, within(1e-6));
    if (seconds > 0) {
      assertThat(merged.vapourContent().mean(bin) / (sum / seconds)).isCloseTo(1, within(1e-9));
      assertThat(merged.humidity().high(bin)).isEqualTo(high);
    }
  }

  private static void same(Channel.Whole one, Channel.Whole other) {
    assertThat(other.seconds()).isCloseTo(one.seconds(), within(1e-6));
    assertThat(other.mean() / one.mean()).isCloseTo(1, within(1e-9));
    assertThat(other.low()).isEqualTo(one.low());
    assertThat(other.high()).isEqualTo(one.high());
  }

  private static List<String> rows(long seed, int count) {
    Random dice = new Random(seed);
    List<String> rows = new ArrayList<>();
    long at = BEGIN_MS;
    for (int i = 0; i < count; i++) {
      rows.add(
          Instant.ofEpochMilli(at)
              + ","
              + (150 + dice.nextInt(80)) / 10.0
              + ","
              + (40 + dice.nextInt(25)));
      at += 60_000L * (1 + dice.nextInt(3));
    }
    return rows;
  }

  private static LogContent read(Path folder, List<String> rows) {
    return LogFixtures.read(folder, "Time,Temp,RH\n" + String.join("\n", rows) + "\n")
        .content()
        .orElseThrow();
  }

  @Property(tries = 50)
  void shuffled_rows_give_the_same_series(
      @ForAll @LongRange(min = 0, max = 1 << 20) long seed,
      @ForAll @IntRange(min = 2, max = 400) int count)
      throws IOException {
    Path folder = Files.createTempDirectory("log");
    List<String> rows = rows(seed, count);
    LogContent ordered = read(folder, rows);
    Collections.shuffle(rows, new Random(seed));
    LogContent shuffled = read(folder, rows);
    assertThat(shuffled.figures()).isEqualTo(ordered.figures());
    assertThat(shuffled.series().size()).isEqualTo(ordered.series().size());
    for (int i = 0; i < ordered.series().size(); i++) {
      assertThat(shuffled.series().vapourPressure().mean(i))
          .isEqualTo(ordered.series().vapourPressure().mean(i));
    }
    Files.delete(folder.resolve("log.csv"));
    Files.delete(folder);
  }

  @Property(tries = 50)
  void two_parts_of_a_log_add_up_to_the_whole_but_for_the_hold_between_them(
      @ForAll @LongRange(min = 0, max = 1 << 20) long seed,
      @ForAll @IntRange(min = 20, max = 180) int cut)
      throws IOException {
    Path folder = Files.createTempDirectory("log");
    List<String> rows = rows(seed, 200);
    LogContent whole = read(folder, rows);
    LogContent first = read(folder, rows.subList(0, cut));
    LogContent second = read(folder, rows.subList(cut, rows.size()));
    assertThat(first.figures().rowsUsed() + second.figures().rowsUsed())
        .isEqualTo(whole.figures().rowsUsed());
    // A last row holds for a median step, of one to three minutes, where no other follows.
    assertThat(first.figures().coveredS() + second.figures().coveredS())
        .isCloseTo(whole.figures().coveredS(), within(240.0));
    Files.delete(folder.resolve("log.csv"));
    Files.delete(folder);
  }
}
