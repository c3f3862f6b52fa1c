package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.airing.RoomAiring;
import org.drysill.assess.ventilation.airing.RoomAiring.AtWeather;
import org.drysill.report.block.Block;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Column;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Words;

/** How fast open windows change the air of each room, at the weathers of the data. */
final class AiringTable {
  private static final int MINUTES = 60;
  private static final int COLUMN_MM = 26;

  private AiringTable() {}

  static List<Block> of(Desk desk) {
    List<RoomAiring> rooms = desk.subject().ventilation().airing();
    return rooms.isEmpty() ? List.of() : List.of(told(rooms), table(desk, rooms));
  }

  private static Block told(List<RoomAiring> rooms) {
    Comparator<RoomAiring> byTime = Comparator.comparingDouble(r -> minutes(winter(r)));
    RoomAiring first = rooms.stream().min(byTime).orElseThrow();
    RoomAiring last = rooms.stream().max(byTime).orElseThrow();
    String quick =
        "On a calm winter day "
            + time(winter(first))
            + " with the windows open as far as they go change the air of the "
            + Words.within(first.name())
            + " once";
    String slow =
        first.equals(last)
            ? "."
            : "; the " + Words.within(last.name()) + " takes " + time(winter(last)) + ".";
    return new Prose(List.of(), "", "", quick + slow);
  }

  private static AtWeather winter(RoomAiring room) {
    return room.weathers().stream().filter(AtWeather::winter).findFirst().orElseThrow();
  }

  private static double minutes(AtWeather at) {
    return MINUTES / at.airChange().likely();
  }

  /** Rounded up: nobody airs by halves of a minute. */
  private static String time(AtWeather at) {
    int whole = (int) Math.ceil(minutes(at));
    return Words.count(whole, "minute", "minutes");
  }

  private static Block table(Desk desk, List<RoomAiring> rooms) {
    List<Column> columns = new ArrayList<>(List.of(Cells.words("room")));
    rooms.get(0).weathers().forEach(w -> columns.add(Cells.numbers(w.weather(), COLUMN_MM)));
    boolean partly = rooms.stream().anyMatch(r -> !r.whole());
    return new Grid(
        desk.notes(rooms.stream().limit(2).map(r -> Optional.of(winter(r).flow())).toList()),
        "Air through open windows, "
            + desk.numbers().unit(Unit.AIRFLOW)
            + ", and how long until it has changed the air of the room once",
        columns,
        rooms.stream().map(r -> row(desk, r)).toList(),
        partly ? "At least: windows whose size or angle was not noted are left out." : "");
  }

  private static Row row(Desk desk, RoomAiring room) {
    List<Cell> cells = new ArrayList<>(List.of(Cells.text(Words.capital(room.name()))));
    room.weathers()
        .forEach(
            w ->
                cells.add(
                    Cells.text(
                        desk.numbers().plain(w.flow()), (int) Math.ceil(minutes(w)) + " min")));
    return new Row(cells, false);
  }
}
