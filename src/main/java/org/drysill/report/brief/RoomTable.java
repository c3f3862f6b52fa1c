package org.drysill.report.brief;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.humidity.RoomAir;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.table.Cells;

/** Rooms with their readings and what follows from them. */
final class RoomTable implements BriefChapter {
  @Override
  public Optional<Section> write(BriefDesk desk) {
    Grid grid =
        Grid.wide(
            "",
            List.of(
                desk.words("rooms.room", 0),
                desk.numbers("rooms.floor-area", Unit.SQUARE_METRE, 14),
                desk.numbers("rooms.air", Unit.CELSIUS, 13),
                desk.numbers("rooms.humidity", Unit.RELATIVE_HUMIDITY, 15),
                desk.numbers("rooms.dew-point", Unit.CELSIUS, 34),
                desk.numbers("rooms.excess", Unit.VAPOUR_CONTENT, 30),
                Cells.words(desk.say("rooms.class"), 12),
                Cells.words(desk.say("rooms.at-risk"), 17)),
            desk.subject().home().rooms().stream().map(r -> row(desk, r)).toList(),
            desk.say("rooms.foot"));
    return Optional.of(
        new Section(
            "rooms",
            desk.say("rooms.heading"),
            desk.say("rooms.running"),
            false,
            List.of(grid.densely())));
  }

  /** The last reading of a room stands for it, as in the long report. */
  private static Row row(BriefDesk desk, RoomFacts room) {
    Optional<RoomAir> air =
        desk.subject().humidity().of(room.id()).stream().reduce((first, last) -> last);
    return Cells.row(
        Cells.text(
            desk.names().room(room.id())
                + air.flatMap(RoomAir::at)
                    .map(at -> ", " + HomeFacts.when(desk, desk.subject().survey().visit(), at))
                    .orElse("")),
        Cells.text(desk.numbers().plain(room.floorArea())),
        air.map(a -> Cells.text(desk.numbers().plain(a.temperature()))).orElse(nothing()),
        air.map(a -> Cells.text(desk.numbers().plain(a.relativeHumidity()))).orElse(nothing()),
        desk.value(air.map(RoomAir::dewPoint)),
        desk.value(air.map(RoomAir::excess)),
        air.flatMap(RoomAir::humidityClass)
            .map(
                c ->
                    Cells.text(
                        c.lowest() == c.highest()
                            ? Integer.toString(c.lowest())
                            : c.lowest() + "–" + c.highest()))
            .orElse(nothing()),
        Cells.text(atRisk(desk, room)));
  }

  private static Cell nothing() {
    return Cells.text(Cells.NOTHING);
  }

  private static String atRisk(BriefDesk desk, RoomFacts room) {
    List<ColdPlace> places =
        desk.subject().condensation().places().stream()
            .filter(p -> p.room().equals(room.id()))
            .toList();
    long all = places.stream().map(ColdPlace::item).distinct().count();
    long risky =
        places.stream()
            .filter(p -> p.months().gravest() != Risk.NONE)
            .map(ColdPlace::item)
            .distinct()
            .count();
    return all == 0
        ? Cells.NOTHING
        : desk.say("rooms.of", Long.toString(risky), Long.toString(all));
  }
}
