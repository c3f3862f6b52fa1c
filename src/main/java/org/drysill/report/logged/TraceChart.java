package org.drysill.report.logged;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.drysill.assess.Unit;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.TimeAbove;
import org.drysill.assess.logs.Trace;
import org.drysill.assess.logs.air.RoomEvents;
import org.drysill.physics.tracer.event.EventKind;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.Tick;
import org.drysill.report.chart.TimeTrace;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** The log of a room: humidity and temperature, lowest to highest of each short stretch. */
final class TraceChart {
  /** More cannot be told apart on paper. */
  private static final int MOST_BANDS = 180;

  private static final int MOST_DATES = 6;
  private static final double DAY_S = 86_400;
  private final Trace trace;
  private final Numbers numbers;
  private final LoggedRoom room;
  private final Optional<RoomEvents> events;

  private TraceChart(Desk desk, LoggedRoom room) {
    this.trace = room.trace();
    this.numbers = desk.numbers();
    this.room = room;
    this.events = desk.subject().assessment().loggedAir().events(room.room());
  }

  static TimeTrace of(Desk desk, LoggedRoom room) {
    return new TraceChart(desk, room).chart();
  }

  private TimeTrace chart() {
    TimeTrace.Panel humidity =
        panel("relative humidity, %", trace::humidity, Unit.RELATIVE_HUMIDITY, limits());
    TimeTrace.Panel temperature =
        panel(
            "temperature, " + numbers.unit(Unit.CELSIUS), trace::celsius, Unit.CELSIUS, List.of());
    String title =
        Words.capital(room.roomName())
            + ": humidity between "
            + Math.round(lowest(humidity))
            + Numbers.JOIN
            + "and "
            + Math.round(highest(humidity))
            + Numbers.JOIN
            + "%, mean "
            + numbers.likely(room.relativeHumidity());
    return new TimeTrace(
        new ChartText(
            title,
            "lowest to highest of every "
                + Words.count(
                    (int) Math.round(bandSteps() * trace.stepS() / 3600.0), "hour", "hours"),
            "The log of this room",
            title
                + ". Temperature between "
                + Math.round(lowest(temperature))
                + " and "
                + Math.round(highest(temperature))
                + " "
                + numbers.unit(Unit.CELSIUS)
                + "."),
        time(),
        List.of(humidity, temperature),
        marks());
  }

  private List<TimeTrace.Marks> marks() {
    return events.stream()
        .flatMap(e -> e.groups().stream())
        .filter(g -> g.kind() != EventKind.DRYING_OR_SLEEP)
        .map(g -> new TimeTrace.Marks(EventTable.said(g.kind()), g.days()))
        .toList();
  }

  private List<TimeTrace.Limit> limits() {
    return room.above().stream()
        .map(TimeAbove::limit)
        .map(l -> new TimeTrace.Limit(100 * l, Math.round(100 * l) + Numbers.JOIN + "%"))
        .toList();
  }

  private TimeTrace.Panel panel(
      String label, IntToDoubleFunction quantity, Unit unit, List<TimeTrace.Limit> limits) {
    List<TimeTrace.Band> bands = bands(quantity, unit);
    double low = bands.stream().mapToDouble(TimeTrace.Band::low).min().orElse(0);
    double high = bands.stream().mapToDouble(TimeTrace.Band::high).max().orElse(1);
    List<TimeTrace.Limit> within = limits.stream().filter(l -> l.at() <= high + 5).toList();
    return new TimeTrace.Panel(label, Axis.around(low, high, 4), bands, within);
  }

  private List<TimeTrace.Band> bands(IntToDoubleFunction quantity, Unit unit) {
    int steps = bandSteps();
    List<TimeTrace.Band> bands = new ArrayList<>();
    for (int from = 0; from < trace.size(); from += steps) {
      int to = Math.min(trace.size(), from + steps);
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int i = from; i < to; i++) {
        double value = numbers.onAxis(quantity.applyAsDouble(i), unit);
        if (!Double.isNaN(value)) {
          low = Math.min(low, value);
          high = Math.max(high, value);
        }
      }
      if (low <= high) {
        bands.add(new TimeTrace.Band(day(from), day(to), low, high));
      }
    }
    return bands;
  }

  private int bandSteps() {
    return Math.max(1, (int) Math.ceil(trace.size() / (double) MOST_BANDS));
  }

  /** Days since the first step. */
  private double day(int step) {
    return (trace.beginEpochS(step) - trace.beginEpochS(0)) / DAY_S;
  }

  private Axis time() {
    double end = day(trace.size());
    int every = (int) Math.max(1, Math.ceil(end / MOST_DATES));
    List<Tick> ticks = new ArrayList<>();
    LocalDate first = trace.begin(0).toLocalDate().plusDays(1);
    for (LocalDate date = first; at(date) < end; date = date.plusDays(every)) {
      ticks.add(new Tick(at(date), date.getDayOfMonth() + Numbers.JOIN + month(date)));
    }
    return new Axis(0, end, ticks);
  }

  private double at(LocalDate date) {
    long start = date.atStartOfDay(trace.begin(0).getZone()).toEpochSecond();
    return (start - trace.beginEpochS(0)) / DAY_S;
  }

  private static String month(LocalDate date) {
    return Words.month(date.getMonthValue()).substring(0, 3);
  }

  private static double lowest(TimeTrace.Panel panel) {
    return panel.bands().stream().mapToDouble(TimeTrace.Band::low).min().orElse(0);
  }

  private static double highest(TimeTrace.Panel panel) {
    return panel.bands().stream().mapToDouble(TimeTrace.Band::high).max().orElse(0);
  }
}
