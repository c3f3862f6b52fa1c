package org.drysill.report.logged;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.humidity.ClassIndication;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.MonthClass;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Column;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** The means of each logged room, its humidity class and how it stands to limits of averages. */
final class RoomsTable {
  private RoomsTable() {}

  static Grid of(Desk desk, List<LoggedRoom> rooms) {
    return Grid.wide(
        "",
        columns(desk.numbers(), rooms.get(0).criteria()),
        rooms.stream().map(r -> row(desk, r)).toList(),
        foot(rooms));
  }

  private static List<Column> columns(Numbers numbers, List<Finding> criteria) {
    List<Column> columns = new ArrayList<>();
    columns.add(Cells.words("mean of the log"));
    columns.add(Cells.numbers("air, " + numbers.unit(Unit.CELSIUS), 14));
    columns.add(Cells.numbers("outdoors, " + numbers.unit(Unit.CELSIUS), 17));
    columns.add(Cells.numbers("humidity, %", 20));
    columns.add(Cells.numbers("excess, " + numbers.unit(Unit.VAPOUR_CONTENT), 21));
    columns.add(Cells.words("humidity class", 15));
    criteria.forEach(c -> columns.add(Cells.words(head(numbers, c), 21)));
    return columns;
  }

  /** Such as "a month, below 65 %". */
  private static String head(Numbers numbers, Finding criterion) {
    String subject = criterion.subject();
    return subject.substring(subject.lastIndexOf(" over ") + 6)
        + " below "
        + criterion.required().map(numbers::likely).orElse("");
  }

  private static Row row(Desk desk, LoggedRoom room) {
    Numbers numbers = desk.numbers();
    List<Cell> cells = new ArrayList<>();
    cells.add(
        Cells.text(Words.capital(room.roomName()), Math.round(room.days()) + " days")
            .with(marks(desk, List.of(room.relativeHumidity(), room.excess()))));
    cells.add(Cells.text(numbers.plain(room.temperature())));
    cells.add(Cells.text(numbers.plain(room.outdoorTemperature())));
    cells.add(Cells.value(numbers, room.relativeHumidity()));
    cells.add(Cells.value(numbers, room.excess()));
    cells.add(Cells.text(classes(room)));
    room.criteria().forEach(c -> cells.add(criterion(numbers, c)));
    return new Row(cells, false);
  }

  private static Cell criterion(Numbers numbers, Finding criterion) {
    Cell verdict = Cells.verdict(criterion.verdict());
    return criterion
        .provided()
        .map(
            f ->
                new Cell(
                    verdict.text(),
                    numbers.one(f.likely(), f.unit(), Rounding.UP),
                    verdict.mark(),
                    verdict.bar(),
                    List.of()))
        .orElse(verdict);
  }

  private static List<String> marks(Desk desk, List<Figure> figures) {
    return figures.stream().map(desk.index()::mark).toList();
  }

  private static String classes(LoggedRoom room) {
    return room.classes().isEmpty()
        ? Cells.NOTHING
        : String.join(", ", room.classes().stream().map(RoomsTable::classes).toList());
  }

  private static String classes(MonthClass month) {
    ClassIndication found = month.humidityClass();
    String numbers =
        found.lowest() == found.highest()
            ? Integer.toString(found.lowest())
            : found.lowest() + "–" + found.highest();
    return month.calendar()
        ? Words.month(month.means().from().getMonthValue()).substring(0, 3) + Numbers.JOIN + numbers
        : numbers;
  }

  private static String foot(List<LoggedRoom> rooms) {
    List<String> parts = new ArrayList<>();
    parts.add(
        "Every reading is held against "
            + Words.list(rooms.stream().map(LoggedRoom::outdoorSaid).distinct().toList())
            + " at its own time. Bounds are the error of the loggers, which no number of readings"
            + " makes smaller.");
    List<MonthClass> months = rooms.stream().flatMap(r -> r.classes().stream()).toList();
    if (!months.isEmpty()) {
      parts.add(classSaid(months));
    }
    rooms.stream()
        .flatMap(r -> r.criteria().stream())
        .flatMap(f -> f.sources().stream())
        .findFirst()
        .ifPresent(
            s ->
                parts.add(
                    "The last columns give the highest mean of any such stretch; the limits are "
                        + "those of "
                        + s.document()
                        + ", written for new dwellings."));
    return String.join(" ", parts);
  }

  private static String classSaid(List<MonthClass> months) {
    String of =
        months.stream().allMatch(MonthClass::calendar)
            ? "The class is that of ISO 13788 by the mean excess of the month: "
            : "No month of the calendar is covered well enough, so the class of ISO 13788 is that of"
                + " the mean excess of the last 30 days: ";
    return of
        + String.join(
            "; ",
            months.stream()
                .map(MonthClass::humidityClass)
                .map(c -> "class " + c.likely() + ", " + c.meaning())
                .distinct()
                .sorted()
                .toList())
        + ".";
  }
}
