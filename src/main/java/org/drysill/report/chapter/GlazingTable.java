package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.surfaces.OtherGlazing;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Column;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Words;

/** What other glazing would change, side by side. */
final class GlazingTable {
  private static final int CHOICE_MM = 25;
  private static final int MOST_ROWS = 16;

  private GlazingTable() {}

  static Grid of(Desk desk, List<OtherGlazing> windows) {
    List<String> kinds =
        windows.stream()
            .flatMap(w -> w.choices().stream().map(OtherGlazing.Choice::glazing))
            .distinct()
            .toList();
    List<Column> columns = new ArrayList<>();
    columns.add(Cells.words("window"));
    columns.add(Cells.numbers("as it is", CHOICE_MM));
    kinds.forEach(kind -> columns.add(Cells.numbers(kind, CHOICE_MM)));
    return Grid.wide(
        "Mornings of a year on which the pane is wet, with other glazing",
        columns,
        windows.stream().limit(MOST_ROWS).map(w -> row(desk, w, kinds)).toList(),
        "The coldest part of each pane, its lower edge where it has a spacer; the moisture of the"
            + " room as it is. Better glazing makes the home tighter: keep or add background"
            + " ventilators.");
  }

  private static Row row(Desk desk, OtherGlazing window, List<String> kinds) {
    List<Cell> cells = new ArrayList<>();
    cells.add(
        Cells.text(
            Words.capital(Words.shortened(window.roomName() + ", " + window.name(), 60)),
            window.now()));
    cells.add(
        Cells.value(desk.numbers(), window.wetMorningsNow())
            .with(List.of(desk.index().mark(window.wetMorningsNow()))));
    for (String kind : kinds) {
      cells.add(
          window.choices().stream()
              .filter(c -> c.glazing().equals(kind))
              .findFirst()
              .map(c -> Cells.value(desk.numbers(), c.wetMornings()))
              .orElse(Cells.text(Cells.NOTHING)));
    }
    return Cells.row(cells.toArray(Cell[]::new));
  }
}
