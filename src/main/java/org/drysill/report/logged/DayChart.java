package org.drysill.report.logged;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.drysill.assess.logs.HourOfDay;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.MonthLines;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/**
 * The typical day of a room: mean humidity by hour, and where it lies for eight tenths of the time.
 */
final class DayChart {
  private static final int HOURS = 24;
  private static final int LABELLED = 3;

  private DayChart() {}

  /** Empty where an hour of the day was never logged. */
  static Optional<MonthLines> of(LoggedRoom room) {
    return room.typicalDay().size() == HOURS ? Optional.of(chart(room)) : Optional.empty();
  }

  private static MonthLines chart(LoggedRoom room) {
    List<HourOfDay> day = room.typicalDay();
    HourOfDay driest =
        day.stream().min(Comparator.comparingDouble(HourOfDay::humidity)).orElseThrow();
    HourOfDay dampest =
        day.stream().max(Comparator.comparingDouble(HourOfDay::humidity)).orElseThrow();
    String title =
        "%s: on a typical day dampest from %s with %s, driest from %s with %s"
            .formatted(
                Words.capital(room.roomName()),
                clock(dampest),
                percent(dampest),
                clock(driest),
                percent(driest));
    List<Double> highs = percents(day, HourOfDay::humidityHigh);
    List<Double> lows = percents(day, HourOfDay::humidityLow);
    return new MonthLines(
        new ChartText(
            title, "relative humidity by hour of the day, %", "The log of this room", title + "."),
        Axis.around(
            lows.stream().mapToDouble(d -> d).min().orElseThrow(),
            highs.stream().mapToDouble(d -> d).max().orElseThrow(),
            4),
        IntStream.range(0, HOURS)
            .mapToObj(h -> h % LABELLED == 0 ? Integer.toString(h) : "")
            .toList(),
        List.of(
            new MonthLines.Line("a tenth above", highs, MonthLines.Style.DASHED),
            new MonthLines.Line("mean", percents(day, HourOfDay::humidity), MonthLines.Style.MAIN),
            new MonthLines.Line("a tenth below", lows, MonthLines.Style.DASHED)),
        Optional.empty());
  }

  private static List<Double> percents(List<HourOfDay> day, ToDoubleFunction<HourOfDay> what) {
    return day.stream().map(h -> 100 * what.applyAsDouble(h)).toList();
  }

  private static String clock(HourOfDay hour) {
    return String.format(Locale.ROOT, "%02d:00", hour.hour());
  }

  private static String percent(HourOfDay hour) {
    return Math.round(100 * hour.humidity()) + Numbers.JOIN + "%";
  }
}
