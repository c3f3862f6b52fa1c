package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.options.Repaired;
import org.drysill.report.block.Block;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** As what the home is reckoned once what comes first is done, and what that alone changes. */
final class RepairedBlocks {
  private RepairedBlocks() {}

  static List<Block> of(Desk desk) {
    List<Block> blocks = new ArrayList<>();
    desk.subject().options().repaired().ifPresent(r -> write(desk, r, blocks));
    return blocks;
  }

  /** The name of the home that measures are held against. */
  static String baseline(Desk desk) {
    return isMended(desk) ? "mended" : "today";
  }

  /** True where measures are studied on a home with something mended. */
  static boolean isMended(Desk desk) {
    return desk.subject().options().repaired().filter(r -> !r.asIf().isEmpty()).isPresent();
  }

  private static void write(Desk desk, Repaired repaired, List<Block> blocks) {
    if (!repaired.asIf().isEmpty()) {
      blocks.add(
          new Prose(
              List.of(),
              "",
              "Reckoned as if " + Words.list(repaired.asIf(), asIf -> within(desk, asIf)) + ".",
              "All measures and packages below are studied on the home as it is then, not as it was"
                  + " found; \"mended\" stands for that home. All other chapters tell the home as"
                  + " found."));
      blocks.add(table(desk, repaired.rows()));
    }
    if (!repaired.staying().isEmpty()) {
      blocks.add(
          new Prose(
              desk.notes(List.of(repaired.unexplained())),
              "",
              "Reckoned as if it stayed.",
              String.join(" ", repaired.staying())
                  + repaired
                      .unexplained()
                      .map(u -> " Not explained: " + desk.numbers().full(u) + ".")
                      .orElse("")));
    }
  }

  /** Names of rooms as they stand within a sentence. */
  private static String within(Desk desk, String asIf) {
    String words = asIf;
    for (RoomFacts room : desk.subject().home().rooms()) {
      words = words.replace("the " + room.name(), "the " + Words.within(room.name()));
    }
    return words;
  }

  private static Grid table(Desk desk, List<Repaired.Row> rows) {
    return Grid.wide(
        "What mending alone changes",
        List.of(Cells.words(""), Cells.numbers("as found", 40), Cells.numbers("mended", 40)),
        rows.stream().map(r -> row(desk, r)).toList(),
        "Likely value, lowest and highest in brackets. How much a defect does is kept as a range"
            + " in all that follows.");
  }

  private static Row row(Desk desk, Repaired.Row row) {
    Numbers numbers = desk.numbers();
    return Cells.row(
        Cells.text(label(numbers, row.then()))
            .with(List.of(desk.index().mark(row.today()), desk.index().mark(row.then()))),
        value(numbers, row.today()),
        value(numbers, row.then()));
  }

  /** Air is printed as where it is held against what is asked. */
  private static Cell value(Numbers numbers, Figure figure) {
    Rounding rounding = figure.unit() == Unit.AIRFLOW ? Rounding.DOWN : Rounding.NEAREST;
    return Cells.value(numbers, figure.value(), figure.unit(), rounding);
  }

  private static String label(Numbers numbers, Figure figure) {
    String name =
        switch (figure.unit()) {
          case MASS_RATE -> "Water that goes into the air of the home";
          case AIRFLOW -> "Outdoor air of the home";
          case VAPOUR_CONTENT -> "Vapour indoors over outdoors";
          default -> Words.capital(figure.name().replace(", with the defects mended", ""));
        };
    String unit = numbers.unit(figure.unit());
    return unit.isEmpty() ? name : name + ", " + unit;
  }
}
