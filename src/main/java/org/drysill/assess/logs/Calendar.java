package org.drysill.assess.logs;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.function.UnaryOperator;

/** Means of a trace by days, weeks and months of the place's calendar. */
final class Calendar {
  private final Trace trace;

  Calendar(Trace trace) {
    this.trace = trace;
  }

  /** Midnight to midnight on the clock of the place; a day of a clock change has 23 or 25 hours. */
  List<PeriodMeans> days() {
    return periods(day -> day, day -> day);
  }

  /** Monday to Sunday. */
  List<PeriodMeans> weeks() {
    return periods(
        day -> day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)),
        day -> day.with(TemporalAdjusters.nextOrSame(DayOfWeek.SUNDAY)));
  }

  /** Months of the calendar. */
  List<PeriodMeans> months() {
    return periods(
        day -> day.withDayOfMonth(1), day -> day.with(TemporalAdjusters.lastDayOfMonth()));
  }

  /** The last days of the log as one period. */
  PeriodMeans last(int days) {
    LocalDate end = day(trace.size() - 1);
    LocalDate start = end.minusDays(days - 1L);
    int from = 0;
    while (day(from).isBefore(start)) {
      from++;
    }
    return means(from, trace.size(), start, end);
  }

  private List<PeriodMeans> periods(
      UnaryOperator<LocalDate> firstDay, UnaryOperator<LocalDate> lastDay) {
    List<PeriodMeans> all = new ArrayList<>();
    int from = 0;
    while (from < trace.size()) {
      LocalDate first = firstDay.apply(day(from));
      int to = from + 1;
      while (to < trace.size() && firstDay.apply(day(to)).equals(first)) {
        to++;
      }
      PeriodMeans means = means(from, to, first, lastDay.apply(day(from)));
      if (means.hours() > 0) {
        all.add(means);
      }
      from = to;
    }
    return all;
  }

  private LocalDate day(int step) {
    return trace.begin(step).toLocalDate();
  }

  private PeriodMeans means(int from, int to, LocalDate first, LocalDate last) {
    double whole =
        Duration.between(
                first.atStartOfDay(trace.begin(from).getZone()),
                last.plusDays(1).atStartOfDay(trace.begin(from).getZone()))
            .toSeconds();
    double seconds = Sums.over(from, to, i -> 1, trace::seconds).seconds();
    return new PeriodMeans(
        first,
        last,
        seconds / 3600,
        seconds / whole,
        mean(from, to, trace::celsius),
        mean(from, to, trace::humidity),
        mean(from, to, trace::contentKgM3),
        known(mean(from, to, trace::excessKgM3)),
        known(mean(from, to, trace::excessPa)),
        known(mean(from, to, i -> trace.isPaired(i) ? trace.outdoorCelsius(i) : Double.NaN)));
  }

  private double mean(int from, int to, IntToDoubleFunction quantity) {
    return Sums.over(from, to, quantity, trace::seconds).mean();
  }

  private static OptionalDouble known(double value) {
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
