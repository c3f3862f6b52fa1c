package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
                Cells.numbers("surface, " + celsius, 12),
                Cells.numbers("above dew point, " + numbers.unit(Unit.KELVIN), 20),
                Cells.numbers("humidity at it, %", 14),
                Cells.numbers("wet below, " + celsius + " outdoors", 15),
                Cells.numbers("temperature factor", 25),
                Cells.numbers("needed", 11),
                Cells.words("at risk", 14),
                Cells.words("verdict", 19)),
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
                    + desk.photos().ofItem(place.item()).map(p -> "; " + p).orElse(""))
            .with(marks(desk, place)),
        now(place, n -> Cells.text(numbers.plain(n.surface()))),
        now(place, n -> Cells.value(numbers, n.margin())),
        now(place, n -> Cells.text(humidity(numbers, n))),
        now(place, n -> Cells.text(n.wetBelow().map(numbers::plain).orElse("never"))),
        Cells.value(numbers, place.factor().figure()),
        Cells.text(
            place
                .months()
                .requiredFactor()
                .map(f -> numbers.plain(f.likely(), f.unit(), Rounding.UP))
                .orElse(Cells.NOTHING)),
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

  private static List<String> marks(Desk desk, ColdPlace place) {
    List<Figure> figures = new ArrayList<>();
    place.now().ifPresent(n -> figures.add(n.margin()));
    figures.add(place.factor().figure());
    Optional<Figure> needed = place.months().requiredFactor();
    needed.ifPresent(figures::add);
    return figures.stream().map(desk.index()::mark).toList();
  }
}
