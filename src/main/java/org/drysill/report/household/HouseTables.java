package org.drysill.report.household;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.humidity.RoomAir;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;
import org.drysill.survey.Fan;
import org.drysill.survey.Filter;
import org.drysill.survey.Window;
import org.drysill.yaml.Quantity;
import org.drysill.yaml.Worded;

/** Rooms with the readings of the visit, windows, fans: as the survey has them, in few words. */
final class HouseTables {
  private HouseTables() {}

  static Grid rooms(Desk desk) {
    Numbers numbers = desk.numbers();
    return Grid.wide(
            "Rooms, with the last reading of the visit",
            List.of(
                Cells.words("room"),
                Cells.numbers("floor area, " + numbers.unit(Unit.SQUARE_METRE), 24),
                Cells.numbers("air, " + numbers.unit(Unit.CELSIUS), 24),
                Cells.numbers("humidity, %", 24),
                Cells.numbers("dew point, " + numbers.unit(Unit.CELSIUS), 28),
                Cells.words("photographs", 32)),
            desk.subject().home().rooms().stream().map(r -> room(desk, r)).toList(),
            "")
        .densely();
  }

  private static Row room(Desk desk, RoomFacts room) {
    Optional<RoomAir> air = desk.subject().humidity().of(room.id()).stream().reduce((a, b) -> b);
    return Cells.row(
        Cells.text(Words.capital(room.name())),
        Cells.text(desk.numbers().plain(room.floorArea())),
        figure(desk, air.map(RoomAir::temperature)),
        figure(desk, air.map(RoomAir::relativeHumidity)),
        figure(desk, air.map(RoomAir::dewPoint)),
        Cells.text(desk.photos().ofRoom(room.id()).orElse("")));
  }

  private static Cell figure(Desk desk, Optional<Figure> figure) {
    return Cells.text(figure.map(desk.numbers()::plain).orElse(Cells.NOTHING));
  }

  static Optional<Grid> windows(Desk desk) {
    List<Row> rows = new ArrayList<>();
    for (RoomFacts room : desk.subject().home().rooms()) {
      room.room().windows().forEach(w -> rows.add(window(desk.numbers(), room, w)));
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Grid.wide(
                    "Windows",
                    List.of(
                        Cells.words("window"),
                        Cells.words("size", 34),
                        Cells.words("glazing", 36),
                        Cells.words("frame", 18),
                        Cells.words("ventilator", 24)),
                    rows,
                    "")
                .densely());
  }

  private static Row window(Numbers numbers, RoomFacts room, Window window) {
    String name = window.name().map(Words::within).orElse("window");
    return Cells.row(
        Cells.text(Words.capital(room.name()) + ", " + name),
        Cells.text(
            window
                .width()
                .flatMap(w -> window.height().map(h -> written(w) + " × " + written(h)))
                .orElse(Cells.NOTHING)),
        Cells.text(
            window
                .glazing()
                .or(() -> window.uValue().map(u -> numbers.one(u.value(), Unit.U_VALUE)))
                .orElse(Cells.NOTHING)),
        Cells.text(window.frame().map(Worded::word).orElse(Cells.NOTHING)),
        Cells.text(
            window
                .backgroundVentilator()
                .map(v -> v.value() > 0 ? numbers.one(v.value(), Unit.VENT_AREA) : "none")
                .orElse("not stated")));
  }

  private static String written(Quantity quantity) {
    return quantity.written().replace(' ', '\u00a0');
  }

  static Optional<Grid> fans(Desk desk) {
    LocalDate visit = desk.subject().survey().visit().date();
    List<Row> rows = new ArrayList<>();
    for (RoomFacts room : desk.subject().home().rooms()) {
      room.room().fans().forEach(f -> rows.add(fan(room, f, visit)));
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Grid.wide(
                    "Fans and their filters",
                    List.of(
                        Cells.words("fan"),
                        Cells.words("kind", 42),
                        Cells.words("flow", 36),
                        Cells.words("filter, and its next change", 50)),
                    rows,
                    "Days and flows as the survey has them. A filter that is due costs flow: change it"
                        + " and write down the day.")
                .densely());
  }

  private static Row fan(RoomFacts room, Fan fan, LocalDate visit) {
    String name = fan.name().orElse(Words.capital(fan.kind().word()));
    return Cells.row(
        Cells.text(name + ", " + Words.within(room.name())),
        Cells.text(fan.kind().word()),
        Cells.text(flow(fan)),
        Cells.text(fan.filter().map(f -> filter(f, visit)).orElse("not stated")));
  }

  private static String flow(Fan fan) {
    return fan.measuredFlow()
        .map(f -> written(f.value()) + " measured")
        .or(() -> fan.declaredFlow().map(f -> written(f) + " declared"))
        .orElse(Cells.NOTHING);
  }

  private static String filter(Filter filter, LocalDate visit) {
    String kind = filter.kind().map(k -> k + "; ").orElse("");
    return kind
        + filter
            .next()
            .map(day -> (day.isBefore(visit) ? "due since " : "next on ") + Words.date(day))
            .orElseGet(
                () ->
                    filter
                        .changed()
                        .map(day -> "changed on " + Words.date(day))
                        .orElse("last change not stated"));
  }
}
