package org.drysill.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AxisTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0 | 62   | 4 | 0 20 40 60 80",
        "0 | 11   | 5 | 0 2 4 6 8 10 12",
        "0 | 4800 | 5 | 0 1000 2000 3000 4000 5000",
        "0 | 0.43 | 4 | 0 0.1 0.2 0.3 0.4 0.5",
        "-4 | 22  | 5 | −5 0 5 10 15 20 25",
        "5 | 25   | 4 | 5 10 15 20 25",
        "3 | 3    | 4 | 3 4",
      })
  void ticks_stand_at_round_numbers(double low, double high, int intervals, String labels) {
    Axis axis = Axis.around(low, high, intervals);
    assertThat(axis.ticks().stream().map(Tick::label)).containsExactly(labels.split(" ", -1));
    assertThat(axis.min()).isLessThanOrEqualTo(low);
    assertThat(axis.max()).isGreaterThanOrEqualTo(high);
  }

  @Test
  void an_axis_has_a_length() {
    assertThatThrownBy(() -> new Axis(2, 2, java.util.List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
