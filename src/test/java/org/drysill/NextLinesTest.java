package org.drysill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.drysill.options.NextReading;
import org.junit.jupiter.api.Test;

class NextLinesTest {
  private static String line(double air, double mould, double ranking) {
    return NextLines.line(
        new NextReading(
            "leaks",
            Optional.empty(),
            "Have the leaks measured",
            "a fan",
            "in winter",
            air,
            mould,
            ranking,
            List.of()));
  }

  @Test
  void a_line_says_what_with_what_when_and_how_much_it_would_tell() {
    assertThat(line(0.894, 0, 0))
        .isEqualTo(
            "Have the leaks measured. With a fan. In winter. It alone would take away 89 % of the"
                + " doubt whether there is enough air.");
  }

  @Test
  void only_doubts_that_it_takes_away_are_told() {
    assertThat(line(0, 0.3, 0.06))
        .endsWith(
            "30 % of the doubt whether walls and corners stay free of mould, 6 % of that which"
                + " package of measures costs less.");
  }
}
