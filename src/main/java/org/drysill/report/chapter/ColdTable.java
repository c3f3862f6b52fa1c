package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.SurfaceNow;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** Every place at the visit and through the year, walls first, the coldest of each kind first. */
final class ColdTable {
  private ColdTable() {}

  static Grid of(Desk desk, CondensationResult cold) {
    Numbers numbers = desk.numbers();
    String celsius = numbers.unit(Unit.CELSIUS);
    List<Row> rows = new ArrayList<>();
    for (SurfaceClass kind : SurfaceClass.values()) {
      cold.coldestFirst().stream()
          .filter(p -> p.surface() == kind)
          .forEach(p -> rows.add(row(desk, p)));
    }
    return Grid.wide(
            "",
            List.of(
                Cells.words("place"),
                Cells.numbers("surface, " + celsius, 11),
                Cells.numbers("above dew point, " + numbers.unit(Unit.KELVIN), 20),
                Cells.numbers("humidity at it, %", 13),
                Cells.numbers("wet below, " + celsius + " outdoors", 14),
                Cells.numbers("temperature factor", 25),
                Cells.numbers("needed", 11),
                Cells.words("at risk", 15),
                Cells.words("verdict", 18)),
            rows,
            "Surface to wet below: at the visit. Wet below: the outdoor temperature at which water first"
                + " appears, the indoor air as it was. Needed: the factor of the critical month; walls"
                + " against mould, glass against water on a cold night.")
        .densely();
  }

  private static Row row(Desk desk, ColdPlace place) {
    Numbers numbers = desk.numbers();
    List<Integer> months = place.months().monthsAtRisk();
    return Cells.row(
        Cells.text(
            ColdChapter.named(place),
            place.kindWords()
                + ", from "
                + place.factor().source().words()
                + desk.photos().ofItem(place.item()).map(p -> "; " + p).orElse("")),
        now(place, n -> Cells.text(numbers.plain(n.surface()))),
        now(place, n -> marked(desk, n.margin())),
        now(place, n -> Cells.text(humidity(numbers, n))),
        now(place, n -> Cells.text(n.wetBelow().map(numbers::plain).orElse("never"))),
        marked(desk, place.factor().figure()),
        place.months().requiredFactor().map(f -> needed(desk, f)).orElse(Cells.text(Cells.NOTHING)),
        Cells.text(months.isEmpty() ? "none" : Words.shortMonths(months)),
        Cells.verdict(place.requirement().verdict()));
  }

  /** Air holds no more than 100 %; what is beyond it is water on the surface. */
  private static String humidity(Numbers numbers, SurfaceNow now) {
    double ratio = now.surfaceHumidity().likely();
    return ratio >= 1 ? "wet" : numbers.plain(ratio, now.surfaceHumidity().unit(), Rounding.UP);
  }

  private static Cell now(ColdPlace place, Function<SurfaceNow, Cell> cell) {
    return place.now().map(cell).orElse(Cells.text(Cells.NOTHING));
  }

  private static Cell marked(Desk desk, Figure figure) {
    return Cells.value(desk.numbers(), figure).with(List.of(desk.index().mark(figure)));
  }

  private static Cell needed(Desk desk, Figure factor) {
    return Cells.text(desk.numbers().plain(factor.likely(), factor.unit(), Rounding.UP))
        .with(List.of(desk.index().mark(factor)));
  }
}
