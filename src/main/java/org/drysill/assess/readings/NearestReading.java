package org.drysill.assess.readings;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.drysill.yaml.Moment;

/** Finds the reading that belongs to another by its time. */
public final class NearestReading {
  private NearestReading() {}

  /**
   * The candidate nearest in time, the earlier in the list of two equally near ones. A moment
   * without time of day may be any of its day, and a reading without moment belongs to the visit,
   * and so to every other; both are only taken where none that is known to be near is to be had.
   *
   * @param wanted the moment to be near to
   * @param candidates where to look
   * @param at the moment of a candidate
   * @param hours how far away it may lie [h]
   * @param <T> what a candidate is
   */
  public static <T> Optional<T> within(
      Optional<Moment> wanted, List<T> candidates, Function<T, Optional<Moment>> at, double hours) {
    return candidates.stream()
        .filter(c -> hoursApart(wanted, at.apply(c)) <= hours)
        .min(
            Comparator.comparing((T c) -> !isTimed(wanted, at.apply(c)))
                .thenComparingDouble(c -> hoursApart(wanted, at.apply(c))));
  }

  private static boolean isTimed(Optional<Moment> a, Optional<Moment> b) {
    return a.flatMap(Moment::time).isPresent() && b.flatMap(Moment::time).isPresent();
  }

  private static double hoursApart(Optional<Moment> a, Optional<Moment> b) {
    return a.isEmpty() || b.isEmpty() ? 0 : hoursApart(a.get(), b.get());
  }

  private static double hoursApart(Moment a, Moment b) {
    boolean untimed = a.time().isEmpty() || b.time().isEmpty();
    if (untimed && a.date().equals(b.date())) {
      return 0;
    }
    return Math.abs(Duration.between(noonOr(a), noonOr(b)).toMinutes() / 60.0);
  }

  private static LocalDateTime noonOr(Moment moment) {
    return moment.date().atTime(moment.time().orElse(LocalTime.NOON));
  }
}
