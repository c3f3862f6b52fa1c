package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.drysill.assess.Unit;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.months.MonthRow;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.report.block.HeatCell;
import org.drysill.report.block.HeatMap;
import org.drysill.report.block.HeatRow;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.MonthLines;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;

/** Surfaces by month: a line against the dew point, and a table of all of them with shades. */
final class ColdMonths {
  private static final int INTERVALS = 5;

  private ColdMonths() {}

  static ChartSpec chart(Desk desk, ColdPlace place) {
    List<Double> surface = line(desk, place, r -> r.surface().likely());
    List<Double> dewPoint = line(desk, place, r -> r.dewPoint().likely());
    List<Double> outdoor = line(desk, place, MonthRow::outdoor);
    List<Double> all = new ArrayList<>(surface);
    all.addAll(dewPoint);
    all.addAll(outdoor);
    double low = all.stream().mapToDouble(d -> d).min().orElseThrow();
    double high = all.stream().mapToDouble(d -> d).max().orElseThrow();
    String title = title(place);
    return new MonthLines(
        new ChartText(
            title,
            desk.numbers().unit(Unit.CELSIUS),
            place.surface() == SurfaceClass.GLASS
                ? "Outdoors: a cold night of each month"
                : "Outdoors: the mean of each month",
            title + ". " + alt(desk, place)),
        Axis.around(low, high, INTERVALS),
        MonthLines.JULY_FIRST,
        List.of(
            new MonthLines.Line("surface", surface, MonthLines.Style.MAIN),
            new MonthLines.Line("dew point indoors", dewPoint, MonthLines.Style.LIMIT),
            new MonthLines.Line("outdoors", outdoor, MonthLines.Style.QUIET)),
        Optional.of(new MonthLines.Below(0, 1, "wet")));
  }

  /** The values from July on, so that the winter stays whole. */
  private static List<Double> line(Desk desk, ColdPlace place, ToDoubleFunction<MonthRow> value) {
    List<Double> values = new ArrayList<>();
    for (int month = 0; month < 12; month++) {
      MonthRow row = place.months().rows().get((month + 6) % 12);
      values.add(desk.numbers().onAxis(value.applyAsDouble(row), Unit.CELSIUS));
    }
    return values;
  }

  private static String title(ColdPlace place) {
    String name = Words.shortened(place.name(), 50);
    String where = name.contains(place.roomName()) ? name : name + ", " + place.roomName();
    List<Integer> wet = months(place, Risk.CONDENSATION);
    List<Integer> risky = place.months().monthsAtRisk();
    if (!wet.isEmpty()) {
      return Words.capital(where) + ": below the dew point in " + Words.months(wet);
    }
    return risky.isEmpty()
        ? Words.capital(where) + ": above the dew point all year"
        : Words.capital(where) + ": dry, but moist enough for mould in " + Words.months(risky);
  }

  private static List<Integer> months(ColdPlace place, Risk risk) {
    return place.months().rows().stream()
        .filter(r -> r.risk() == risk)
        .map(MonthRow::month)
        .toList();
  }

  private static String alt(Desk desk, ColdPlace place) {
    MonthRow january = place.months().rows().get(0);
    return "In January the surface is at "
        + desk.numbers().one(january.surface().likely(), Unit.CELSIUS)
        + " and the dew point at "
        + desk.numbers().one(january.dewPoint().likely(), Unit.CELSIUS)
        + ".";
  }

  static HeatMap table(List<ColdPlace> places) {
    return new HeatMap(
        List.of(),
        "Humidity of the air at the surface, in % by month",
        "place",
        places.stream().map(p -> row(p, ColdMonths::cell)).toList(),
        "Shaded: moist enough for mould; dark: wet. Walls first, then the coldest part of each window on"
            + " a cold night of the month.");
  }

  /** The humidity of the room that each place bears, by month. */
  static HeatMap bearable(List<ColdPlace> places) {
    return new HeatMap(
        List.of(),
        "Highest humidity of the room that keeps the place below its limit, in % by month",
        "place",
        places.stream().map(p -> row(p, ColdMonths::bearable)).toList(),
        "Shaded: below what the room has then, so at risk. 100: whatever the humidity.");
  }

  private static HeatCell bearable(MonthRow row) {
    double percent = Math.min(100, 100 * row.highestIndoorHumidity().likely());
    return new HeatCell(Long.toString((long) Math.floor(percent + 1e-9)), shade(row));
  }

  private static HeatRow row(ColdPlace place, Function<MonthRow, HeatCell> cell) {
    String name =
        place.name().contains(place.roomName())
            ? place.name()
            : place.roomName() + ", " + place.name();
    return new HeatRow(
        Words.capital(Words.shortened(name, 60)),
        place.months().rows().stream().map(cell).toList());
  }

  private static HeatCell cell(MonthRow row) {
    double percent = Math.min(100, 100 * row.surfaceHumidity().likely());
    return new HeatCell(Long.toString((long) Math.ceil(percent - 1e-9)), shade(row));
  }

  private static String shade(MonthRow row) {
    return switch (row.risk()) {
      case NONE -> row.worst() == Risk.NONE ? "0" : "1";
      case MOULD -> "2";
      case CONDENSATION -> "3";
    };
  }
}
