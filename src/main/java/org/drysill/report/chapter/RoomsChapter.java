package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.humidity.RoomAir;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Note;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Words;

/** Rooms at a glance. */
final class RoomsChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    List<RoomFacts> rooms = desk.subject().home().rooms();
    Grid grid =
        new Grid(
            notes(desk, rooms),
            "",
            List.of(
                Cells.words("room"),
                Cells.numbers("floor area, " + desk.numbers().unit(Unit.SQUARE_METRE), 15),
                Cells.numbers("air, " + desk.numbers().unit(Unit.CELSIUS), 12),
                Cells.numbers("humidity, %", 14),
                Cells.numbers("dew point, " + desk.numbers().unit(Unit.CELSIUS), 16),
                Cells.words("fan extract", 18),
                Cells.numbers("places at risk", 14)),
            rooms.stream().map(r -> row(desk, r)).toList(),
            "A dash: nothing was read, or nothing is asked there.");
    return Optional.of(
        new Section("rooms", heading(desk), "Rooms at a glance", false, List.of(grid)));
  }

  /** One dew point stands for all: they come about alike. */
  private static List<Note> notes(Desk desk, List<RoomFacts> rooms) {
    return rooms.stream()
        .flatMap(r -> desk.subject().humidity().of(r.id()).stream().limit(1))
        .limit(1)
        .map(RoomAir::dewPoint)
        .map(desk::note)
        .toList();
  }

  private static String heading(Desk desk) {
    int rooms = desk.subject().home().rooms().size();
    long read = desk.subject().humidity().readings().stream().map(RoomAir::room).distinct().count();
    int logged = desk.subject().logs().rooms().size();
    List<String> known = new ArrayList<>();
    if (read > 0 || logged == 0) {
      known.add((read == 0 ? "none" : Words.number((int) read)) + " was read");
    }
    if (logged > 0) {
      known.add(Words.number(logged) + " was logged");
    }
    return Words.capital(Words.count(rooms, "room", "rooms"))
        + "; the air of "
        + String.join(", that of ", known);
  }

  private static Row row(Desk desk, RoomFacts room) {
    Optional<RoomAir> air = desk.subject().humidity().of(room.id()).stream().reduce((a, b) -> b);
    return Cells.row(
        Cells.text(Words.capital(room.name()), desk.photos().ofRoom(room.id()).orElse("")),
        Cells.text(desk.numbers().plain(room.floorArea())),
        plain(desk, air.map(RoomAir::temperature)),
        plain(desk, air.map(RoomAir::relativeHumidity)),
        plain(desk, air.map(RoomAir::dewPoint)),
        extract(desk, room),
        Cells.text(atRisk(desk, room)));
  }

  private static Cell plain(Desk desk, Optional<Figure> figure) {
    return Cells.text(figure.map(desk.numbers()::plain).orElse(Cells.NOTHING));
  }

  private static Cell extract(Desk desk, RoomFacts room) {
    return desk.subject().ventilation().extract().stream()
        .filter(f -> f.room().filter(room.id()::equals).isPresent())
        .map(Finding::verdict)
        .findFirst()
        .map((Verdict v) -> Cells.verdict(v))
        .orElse(Cells.text(Cells.NOTHING));
  }

  private static String atRisk(Desk desk, RoomFacts room) {
    var places =
        desk.subject().condensation().places().stream()
            .filter(p -> p.room().equals(room.id()))
            .toList();
    long risky =
        places.stream()
            .filter(p -> p.months().gravest() != Risk.NONE)
            .map(p -> p.item())
            .distinct()
            .count();
    long all = places.stream().map(p -> p.item()).distinct().count();
    return all == 0 ? Cells.NOTHING : risky + "\u00a0of\u00a0" + all;
  }
}
