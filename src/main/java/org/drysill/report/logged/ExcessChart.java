package org.drysill.report.logged;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.drysill.assess.Unit;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.PeriodMeans;
import org.drysill.physics.moisture.HumidityClass;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.Scatter;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** The excess of each day against its outdoor temperature, with the limits of the classes. */
final class ExcessChart {
  /** A day with fewer hours than this says little of itself. */
  private static final double HALF = 0.5;

  private final Numbers numbers;
  private final List<LoggedRoom> rooms;

  private ExcessChart(Desk desk, List<LoggedRoom> rooms) {
    this.numbers = desk.numbers();
    this.rooms = rooms;
  }

  /** Empty where fewer than two days can be shown. */
  static Optional<Scatter> of(Desk desk, List<LoggedRoom> rooms) {
    List<LoggedRoom> paired = rooms.stream().filter(r -> r.source().simultaneous()).toList();
    long days = paired.stream().flatMap(r -> days(r).stream()).count();
    return days < 2 ? Optional.empty() : Optional.of(new ExcessChart(desk, paired).chart());
  }

  private Scatter chart() {
    List<Scatter.Cloud> clouds =
        rooms.stream()
            .map(
                r ->
                    new Scatter.Cloud(
                        Words.capital(r.roomName()), days(r).stream().map(this::point).toList()))
            .toList();
    Axis outdoor = axis(clouds, 0, Scatter.Point::x, 6);
    double ceiling = limit(HumidityClass.CLASS_4, outdoor.min());
    Axis excess = axis(clouds, ceiling, Scatter.Point::y, 5);
    String title =
        "Day by day the "
            + Words.list(rooms.stream().map(r -> Words.within(r.roomName())).toList())
            + " held more water than outdoors";
    return new Scatter(
        new ChartText(
            title,
            "mean excess of each day, " + numbers.unit(Unit.VAPOUR_CONTENT),
            "Logs; limits of classes by ISO 13788, meant for monthly means",
            title
                + ". "
                + Words.list(
                    rooms.stream()
                        .map(r -> Words.capital(r.roomName()) + " mean " + numbers.full(r.excess()))
                        .toList())
                + "."),
        outdoor,
        excess,
        clouds,
        lines(outdoor),
        "mean outdoor temperature of the day, " + numbers.unit(Unit.CELSIUS));
  }

  private static List<PeriodMeans> days(LoggedRoom room) {
    return room.byDay().stream()
        .filter(d -> d.coverage() >= HALF && d.excessKgM3().isPresent())
        .toList();
  }

  private Scatter.Point point(PeriodMeans day) {
    return new Scatter.Point(
        numbers.onAxis(day.outdoorCelsius().orElseThrow(), Unit.CELSIUS),
        numbers.onAxis(day.excessKgM3().orElseThrow(), Unit.VAPOUR_CONTENT));
  }

  private interface Coordinate {
    double of(Scatter.Point point);
  }

  private static Axis axis(
      List<Scatter.Cloud> clouds, double also, Coordinate coordinate, int intervals) {
    double[] values =
        DoubleStream.concat(
                clouds.stream().flatMap(c -> c.points().stream()).mapToDouble(coordinate::of),
                DoubleStream.of(0, also))
            .toArray();
    return Axis.around(
        Arrays.stream(values).min().orElse(0), Arrays.stream(values).max().orElse(1), intervals);
  }

  private List<Scatter.Line> lines(Axis outdoor) {
    List<Scatter.Line> lines = new ArrayList<>();
    for (HumidityClass limit : HumidityClass.values()) {
      if (limit.upperLimitKgM3(0).isPresent()) {
        lines.add(
            new Scatter.Line(
                "top of class " + limit.number(),
                corners(outdoor).stream()
                    .map(x -> new Scatter.Point(x, limit(limit, x)))
                    .toList()));
      }
    }
    return lines;
  }

  /** Level up to freezing, straight down from there. */
  private List<Double> corners(Axis outdoor) {
    double freezing = numbers.onAxis(0, Unit.CELSIUS);
    boolean within = outdoor.min() < freezing && freezing < outdoor.max();
    return within
        ? List.of(outdoor.min(), freezing, outdoor.max())
        : List.of(outdoor.min(), outdoor.max());
  }

  private double limit(HumidityClass humidityClass, double printedOutdoor) {
    double zero = numbers.onAxis(0, Unit.CELSIUS);
    double degree = numbers.onAxis(1, Unit.CELSIUS) - zero;
    double kept = humidityClass.upperLimitKgM3((printedOutdoor - zero) / degree).orElse(0);
    return numbers.onAxis(kept, Unit.VAPOUR_CONTENT);
  }
}
