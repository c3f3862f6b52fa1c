package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.PlaceKind;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.SurfaceNow;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Rounding;

/** Cold surfaces: every place with its temperature factor and its year, walls first. */
final class ColdSection implements BriefChapter {
  @Override
  public Optional<Section> write(BriefDesk desk) {
    CondensationResult cold = desk.subject().condensation();
    if (cold.places().isEmpty()) {
      return Optional.empty();
    }
    List<Row> rows = new ArrayList<>();
    for (SurfaceClass kind : SurfaceClass.values()) {
      cold.coldestFirst().stream()
          .filter(p -> p.surface() == kind)
          .forEach(p -> rows.add(row(desk, p)));
    }
    Grid grid =
        Grid.wide(
            "",
            List.of(
                desk.words("cold.place", 0),
                desk.numbers("cold.margin", Unit.KELVIN, 18),
                desk.numbers("cold.factor", Unit.RATIO, 33),
                desk.numbers("cold.needed", Unit.RATIO, 18),
                desk.words("cold.months", 20),
                desk.words("cold.year", 20),
                desk.words("cold.verdict", 23)),
            rows,
            desk.say("cold.foot"));
    boolean risky = cold.places().stream().anyMatch(p -> p.months().gravest() != Risk.NONE);
    return Optional.of(
        new Section(
            "cold",
            desk.say(risky ? "cold.heading.risk" : "cold.heading.dry"),
            desk.say("cold.running"),
            false,
            List.of(grid.densely())));
  }

  private static Row row(BriefDesk desk, ColdPlace place) {
    Optional<Figure> mould =
        place.year().either(wall -> Optional.of(wall.mould()), glass -> none());
    Optional<Figure> mornings =
        place.year().either(wall -> none(), glass -> Optional.of(glass.wetMornings()));
    Optional<Figure> margin = place.now().map(SurfaceNow::margin);
    Optional<Figure> needed = place.months().requiredFactor();
    Figure factor = place.factor().figure();
    return Cells.row(
        Cells.text(
            desk.names().place(place.item()).orElse(place.item()),
            part(desk, place) + desk.terms().word("factor-from", place.factor().source())),
        likely(desk, margin, Rounding.NEAREST),
        desk.value(factor),
        likely(desk, needed, Rounding.UP),
        Cells.text(Months.of(desk, place.months().monthsAtRisk())),
        mould
            .map(f -> year(desk, "cold.index", f))
            .or(
                () ->
                    mornings.map(
                        f -> year(desk, isOne(desk, f) ? "cold.morning" : "cold.mornings", f)))
            .orElse(Cells.text(Cells.NOTHING)),
        Compared.verdict(desk, place.requirement().verdict()));
  }

  /** Which part of a window it is; a spot and a wall have no parts. */
  private static String part(BriefDesk desk, ColdPlace place) {
    return place.kind() == PlaceKind.COLD_SPOT || place.kind() == PlaceKind.BUILT_UP_WALL
        ? ""
        : desk.terms().word("part", place.kind()) + ", ";
  }

  private static Optional<Figure> none() {
    return Optional.empty();
  }

  private static Cell likely(BriefDesk desk, Optional<Figure> figure, Rounding rounding) {
    return figure
        .map(f -> marked(desk, f, desk.numbers().plain(f.likely(), f.unit(), rounding)))
        .orElse(Cells.text(Cells.NOTHING));
  }

  private static Cell year(BriefDesk desk, String key, Figure figure) {
    return marked(desk, figure, desk.say(key, desk.numbers().plain(figure)));
  }

  private static boolean isOne(BriefDesk desk, Figure figure) {
    return desk.numbers().plain(figure).equals("1");
  }

  private static Cell marked(BriefDesk desk, Figure figure, String words) {
    return Cells.text(words).with(List.of(desk.mark(figure)));
  }
}
