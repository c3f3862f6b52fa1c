package org.drysill.assess.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.drysill.yaml.Moment;
import org.junit.jupiter.api.Test;

class NearestReadingTest {
  private static final LocalDate DAY = LocalDate.of(2026, 1, 22);

  private static Optional<Moment> at(int hour, int minute) {
    return Optional.of(new Moment(DAY, Optional.of(LocalTime.of(hour, minute))));
  }

  private static Optional<Moment> day(int offset) {
    return Optional.of(new Moment(DAY.plusDays(offset), Optional.empty()));
  }

  private static Optional<Optional<Moment>> nearest(
      Optional<Moment> wanted, List<Optional<Moment>> candidates) {
    return NearestReading.within(wanted, candidates, m -> m, 3);
  }

  @Test
  void the_nearest_in_time_is_taken_on_either_side() {
    assertThat(nearest(at(10, 0), List.of(at(8, 0), at(11, 0)))).contains(at(11, 0));
    assertThat(nearest(at(10, 0), List.of(at(9, 30), at(11, 0)))).contains(at(9, 30));
  }

  /** Ten minutes away is nearer than some time of the same day, or than no time at all. */
  @Test
  void a_reading_of_a_known_time_goes_before_one_without() {
    assertThat(nearest(at(10, 0), List.of(day(0), at(10, 10)))).contains(at(10, 10));
    assertThat(nearest(at(10, 0), List.of(Optional.empty(), at(12, 0), at(11, 0))))
        .contains(at(11, 0));
    assertThat(nearest(day(0), List.of(day(0), at(10, 10)))).contains(day(0));
  }

  @Test
  void what_lies_too_far_away_does_not_belong() {
    assertThat(nearest(at(10, 0), List.of(at(13, 1)))).isEmpty();
    assertThat(nearest(at(10, 0), List.of(at(13, 0)))).isPresent();
  }

  @Test
  void a_day_without_time_is_as_near_as_any_of_its_day() {
    assertThat(nearest(at(23, 0), List.of(day(0)))).isPresent();
    assertThat(nearest(day(0), List.of(at(1, 0)))).isPresent();
    assertThat(nearest(at(10, 0), List.of(day(1)))).isEmpty();
  }

  @Test
  void a_reading_without_moment_belongs_to_the_visit() {
    assertThat(nearest(Optional.empty(), List.of(day(300)))).isPresent();
    assertThat(nearest(at(10, 0), List.of(Optional.empty()))).isPresent();
  }
}
