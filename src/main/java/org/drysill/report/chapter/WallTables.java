package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.elements.WallVariant;
import org.drysill.assess.elements.WallWithin;
import org.drysill.assess.elements.WaterMonth;
import org.drysill.physics.layers.Iso13788Element.Verdict;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** The months of a wall, and what changes at it would do. */
final class WallTables {
  private WallTables() {}

  /** The months in which water settles, lies or dries, in the order of the wall's year. */
  static Grid months(Desk desk, WallWithin wall) {
    Numbers numbers = desk.numbers();
    String water = numbers.unit(Unit.WATER_CONTENT);
    return new Grid(
            List.of(),
            "Water within the " + Words.within(Words.shortened(wall.name(), 60)) + " by month",
            List.of(
                Cells.words("month"),
                Cells.numbers("outdoors, " + numbers.unit(Unit.CELSIUS), 18),
                Cells.numbers("settles, " + water, 18),
                Cells.numbers("dries, " + water, 18),
                Cells.numbers("in the wall at its end, " + water, 38)),
            wall.year().months().stream()
                .filter(m -> m.storedKgM2().high() > 0 || m.driedKgM2() > 0)
                .map(m -> row(numbers, m))
                .toList(),
            "In small type: the driest and the wettest case within all ranges.")
        .densely();
  }

  private static Row row(Numbers numbers, WaterMonth month) {
    return Cells.row(
        Cells.text(Words.month(month.month())),
        Cells.text(numbers.plain(month.outdoorC(), Unit.CELSIUS, Rounding.NEAREST)),
        Cells.text(numbers.plain(month.settledKgM2(), Unit.WATER_CONTENT, Rounding.UP)),
        Cells.text(numbers.plain(month.driedKgM2(), Unit.WATER_CONTENT, Rounding.DOWN)),
        Cells.value(numbers, month.storedKgM2(), Unit.WATER_CONTENT, Rounding.UP));
  }

  /** The wall as it stands and each change beside it. */
  static Grid variants(Desk desk, WallWithin wall) {
    String water = desk.numbers().unit(Unit.WATER_CONTENT);
    List<Row> rows = new ArrayList<>();
    rows.add(
        Cells.strong(
            Cells.text("As it stands"),
            Cells.text(word(wall.year().likely())),
            Cells.text(word(wall.year().worst())),
            Cells.value(desk.numbers(), wall.year().highest())));
    wall.variants().forEach(v -> rows.add(row(desk, v)));
    return new Grid(
            desk.notes(wall.variants().stream().map(v -> Optional.of(v.changed())).toList()),
            "What changes would do: bounded estimates",
            List.of(
                Cells.words(""),
                Cells.words("likely", 22),
                Cells.words("at worst", 22),
                Cells.numbers("highest content, " + water, 32)),
            rows,
            "")
        .densely();
  }

  private static Row row(Desk desk, WallVariant variant) {
    Figure by = variant.changed();
    return Cells.row(
        Cells.text(
            Words.capital(variant.kind().words()),
            by.unit() == Unit.PASCAL
                ? "by " + desk.numbers().full(by)
                : "as much as " + desk.numbers().full(by.value(), Unit.COUNT) + " m of still air"),
        Cells.text(word(variant.likely())),
        Cells.text(word(variant.worst())),
        Cells.value(desk.numbers(), variant.highest()));
  }

  private static String word(Verdict verdict) {
    return switch (verdict) {
      case NONE -> "stays dry";
      case DRIES -> "wet, dries";
      case ACCUMULATES -> "stays wet";
    };
  }
}
