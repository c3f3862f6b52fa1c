package org.drysill.assess.surfaces.months;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MonthNamesTest {
  @Test
  void runs_reach_across_the_turn_of_the_year() {
    assertThat(MonthNames.of(List.of(1, 2, 11, 12))).isEqualTo("November to February");
  }

  @Test
  void several_runs_are_joined() {
    assertThat(MonthNames.of(List.of(3, 5, 6, 9))).isEqualTo("March, May to June and September");
  }

  @Test
  void a_whole_year_is_every_month() {
    assertThat(MonthNames.of(IntStream.rangeClosed(1, 12).boxed().toList()))
        .isEqualTo("every month");
  }
}
