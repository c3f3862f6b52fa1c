package org.drysill.assess.change.air;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.drysill.assess.change.shown.Doubt;
import org.drysill.physics.Range;
import org.drysill.reference.readings.ReadingRules;
import org.junit.jupiter.api.Test;

/** Weather of two visits: limits of 5 K, 300 Pa and 12 °C. */
class WeatherTest {
  private static final Weather WEATHER = new Weather(ReadingRules.bundled().change());

  private static Outdoors air(double celsius, double pascal) {
    return new Outdoors(
        Range.exactly(celsius), Optional.of(Range.exactly(pascal)), "mean of the readings");
  }

  private static Outdoors dry(double celsius) {
    return new Outdoors(Range.exactly(celsius), Optional.empty(), "mean of the readings");
  }

  private static Optional<Doubt> doubt(Outdoors before, Outdoors after) {
    return WEATHER.doubt(before, after).flatMap(j -> j.doubt());
  }

  @Test
  void each_limit_may_be_reached_and_not_passed() {
    assertThat(doubt(air(2, 600), air(7, 900))).isEmpty();
    assertThat(doubt(air(7, 900), air(2, 600))).isEmpty();
    assertThat(doubt(air(2, 600), air(7.1, 600))).contains(Doubt.WEATHER_UNLIKE);
    assertThat(doubt(air(2, 600), air(7, 901))).contains(Doubt.WEATHER_UNLIKE);
    assertThat(doubt(air(12, 600), air(12, 600))).isEmpty();
    assertThat(doubt(air(12.1, 600), air(11, 600))).contains(Doubt.TOO_WARM);
    assertThat(doubt(air(11, 600), air(12.1, 600))).contains(Doubt.TOO_WARM);
  }

  @Test
  void the_criterion_is_told_with_its_limit() {
    assertThat(WEATHER.doubt(air(4, 500), air(6, 801)).orElseThrow().criterion())
        .isEqualTo(
            "vapour 500 Pa and 801 Pa, further apart than the 300 Pa up to which weather counts as"
                + " alike");
    OutdoorLikeness alike = WEATHER.compare(Optional.of(air(4, 500)), Optional.of(air(6, 600)));
    assertThat(alike.alike()).isTrue();
    assertThat(alike.vapourAfter().orElseThrow().likely()).isEqualTo(600);
    assertThat(alike.vapourBefore().orElseThrow().working().inputs()).hasSize(2);
  }

  @Test
  void vapour_that_was_not_read_is_not_held_against_anything() {
    assertThat(doubt(dry(5), air(6, 900))).isEmpty();
    assertThat(doubt(air(6, 900), dry(5))).isEmpty();
    OutdoorLikeness once = WEATHER.compare(Optional.of(dry(5)), Optional.of(air(6, 900)));
    assertThat(once.said()).doesNotContain("vapour");
    assertThat(once.vapourBefore()).isEmpty();
    assertThat(once.before().orElseThrow().working().inputs()).hasSize(1);
  }

  @Test
  void weather_of_one_visit_says_nothing() {
    assertThat(WEATHER.compare(Optional.empty(), Optional.of(dry(5))).alike()).isFalse();
    assertThat(WEATHER.compare(Optional.of(dry(5)), Optional.empty()).said())
        .contains("not read at both visits");
  }
}
