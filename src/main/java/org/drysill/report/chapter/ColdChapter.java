package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** Condensation and mould: every cold spot and window now and by month. */
final class ColdChapter implements Chapter {
  private static final int CHARTS = 2;
  private static final int HEAT_ROWS = 14;

  @Override
  public Optional<Section> write(Desk desk) {
    CondensationResult cold = desk.subject().condensation();
    if (cold.places().isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Prose(
            List.of(),
            "",
            "",
            "The temperature factor says how warm a surface is between outdoors (0) and the room "
                + "(1). Walls are held against mould, which grows where the air at the surface "
                + "stays moist for weeks; glass against water on cold nights."));
    Optional<Block> now = now(desk, cold);
    now.ifPresent(blocks::add);
    blocks.add(new Subhead(List.of(), "Through the year"));
    blocks.add(factors(desk, cold));
    blocks.add(ColdMonths.table(cold.coldestFirst().stream().limit(HEAT_ROWS).toList()));
    List<ColdPlace> charted =
        cold.coldestFirst().stream().filter(p -> p.surface() == SurfaceClass.OPAQUE).toList();
    List<ColdPlace> shown = charted.isEmpty() ? cold.coldestFirst() : charted;
    shown.stream()
        .limit(CHARTS)
        .forEach(p -> blocks.add(ChartBlocks.of("months-" + p.id(), ColdMonths.chart(desk, p))));
    blocks.add(new Subhead(List.of(), "Place by place"));
    blocks.add(new Bullets(List.of(), cold.places().stream().map(ColdChapter::said).toList()));
    if (!cold.vapour().isEmpty()) {
      blocks.add(
          new Prose(
              List.of(),
              "small",
              "",
              "The indoor moisture behind the months: "
                  + String.join(
                      " ", cold.vapour().stream().map(Words::sentence).distinct().toList())));
    }
    return Optional.of(new Section("cold", heading(cold), "Condensation and mould", true, blocks));
  }

  private static String heading(CondensationResult cold) {
    long walls = risky(cold, SurfaceClass.OPAQUE);
    long glass = risky(cold, SurfaceClass.GLASS);
    if (walls + glass == 0) {
      return "No surface that was looked at is at risk in an average year";
    }
    List<String> parts = new ArrayList<>();
    if (walls > 0) {
      parts.add(Words.count((int) walls, "surface is", "surfaces are") + " at risk of mould");
    }
    if (glass > 0) {
      parts.add(Words.count((int) glass, "window gets", "windows get") + " wet on cold nights");
    }
    return Words.capital(Words.list(parts));
  }

  private static long risky(CondensationResult cold, SurfaceClass surface) {
    return cold.places().stream()
        .filter(p -> p.surface() == surface && p.months().gravest() != Risk.NONE)
        .map(ColdPlace::item)
        .distinct()
        .count();
  }

  private static String named(ColdPlace place) {
    return Words.capital(
        place.name().contains(place.roomName())
            ? place.name()
            : place.roomName() + ", " + place.name());
  }

  private static String said(ColdPlace place) {
    String text = named(place) + ": " + Words.sentence(place.verdict());
    return text + place.neverDry().map(n -> " " + Words.sentence(n)).orElse("");
  }

  private static Optional<Block> now(Desk desk, CondensationResult cold) {
    Numbers numbers = desk.numbers();
    List<ColdPlace> seen = cold.places().stream().filter(p -> p.now().isPresent()).toList();
    if (seen.isEmpty()) {
      return Optional.empty();
    }
    var first = seen.get(0).now().get();
    return Optional.of(
        new Grid(
            desk.notes(
                List.of(
                    Optional.of(first.margin()),
                    Optional.of(first.surfaceHumidity()),
                    first.wetBelow())),
            "At the visit",
            List.of(
                Cells.words("place"),
                Cells.numbers("surface, " + numbers.unit(Unit.CELSIUS), 18),
                Cells.numbers("above dew point, " + numbers.unit(Unit.KELVIN), 26),
                Cells.numbers("humidity at it, %", 18),
                Cells.numbers("wet below, " + numbers.unit(Unit.CELSIUS) + " outdoors", 20)),
            seen.stream()
                .map(
                    p ->
                        Cells.row(
                            Cells.text(named(p)),
                            Cells.text(numbers.plain(p.now().get().surface())),
                            Cells.value(numbers, p.now().get().margin()),
                            Cells.text(numbers.plain(p.now().get().surfaceHumidity())),
                            Cells.text(
                                p.now().get().wetBelow().map(numbers::plain).orElse("never"))))
                .toList(),
            "Wet below: the outdoor temperature at which water first appears, the indoor air as it was."));
  }

  private static Block factors(Desk desk, CondensationResult cold) {
    Numbers numbers = desk.numbers();
    List<Optional<Figure>> noted = new ArrayList<>();
    cold.coldestFirst().stream()
        .limit(2)
        .forEach(
            p -> {
              noted.add(Optional.of(p.factor().figure()));
              noted.add(p.months().requiredFactor());
            });
    return new Grid(
        desk.notes(noted),
        "",
        List.of(
            Cells.words("place"),
            Cells.numbers("temperature factor", 26),
            Cells.numbers("needed", 16),
            Cells.words("months at risk", 30),
            Cells.words("verdict", 20)),
        cold.coldestFirst().stream().map(p -> row(numbers, p)).toList(),
        "");
  }

  private static Row row(Numbers numbers, ColdPlace place) {
    List<Integer> months = place.months().monthsAtRisk();
    return Cells.row(
        Cells.text(named(place), place.kindWords() + ", from " + place.factor().source().words()),
        Cells.value(numbers, place.factor().figure()),
        Cells.text(
            place
                .months()
                .requiredFactor()
                .map(f -> numbers.plain(f.likely(), f.unit(), Rounding.UP))
                .orElse(Cells.NOTHING)),
        Cells.text(months.isEmpty() ? "none" : Words.months(months)),
        Cells.verdict(place.requirement().verdict()));
  }
}
