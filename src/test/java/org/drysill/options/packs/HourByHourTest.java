package org.drysill.options.packs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * The best package by month against that found hour by hour, in a few of the hundred homes of
 * {@code org.drysill.benchmark.HourByHourExperiment}.
 */
class HourByHourTest {
  private static final int HOMES = 8;

  @Test
  void the_best_package_by_month_is_the_best_hour_by_hour() {
    List<HourByHour.Compared> all =
        LongStream.range(0, HOMES).parallel().mapToObj(HourByHour::home).toList();
    assertThat(all.stream().mapToInt(HourByHour.Compared::packages).sum()).isGreaterThan(100);
    assertThat(all).allMatch(HourByHour.Compared::same);
  }
}
