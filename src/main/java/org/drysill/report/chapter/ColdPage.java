package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drysill.assess.Unit;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.Seen;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.months.MonthRow;
import org.drysill.assess.surfaces.months.MonthTable;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.assess.surfaces.year.DayOfYear;
import org.drysill.assess.surfaces.year.GlassYear;
import org.drysill.assess.surfaces.year.WallYear;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;
import org.drysill.survey.CondensationSeen;
import org.drysill.survey.MouldSeen;

/** The cold places as someone reads them who lives there: where, why, from when, what stops it. */
final class ColdPage {
  private static final int MOST_ROWS = 24;

  private ColdPage() {}

  /** One row for each place that is at risk, of a window its worst part; walls first. */
  static Grid of(Desk desk, CondensationResult cold) {
    List<Row> rows =
        worstOfEach(cold).stream()
            .filter(ColdPage::atRisk)
            .limit(MOST_ROWS)
            .map(p -> row(desk, p))
            .toList();
    String celsius = desk.numbers().unit(Unit.CELSIUS);
    return Grid.wide(
            "Where, why, from when, and what would stop it",
            List.of(
                Cells.words("where"),
                Cells.numbers("surface, " + celsius, 13),
                Cells.numbers("dew point, " + celsius, 13),
                Cells.words("from when", 60),
                Cells.words("what would stop it", 31)),
            rows,
            "Surface and dew point in January, on glass in a cold night of it: the nearer they are, the"
                + " moister is the surface. The mould index runs from 0 to 6; from 1 a microscope shows"
                + " growth, from 3 the eye. It ranks places from a clean start in summer and foretells"
                + " none; cleaning, light and draughts are not in it.")
        .densely();
  }

  /** True where there is something to show. */
  static boolean hasRows(CondensationResult cold) {
    return cold.places().stream().anyMatch(ColdPage::atRisk);
  }

  private static boolean atRisk(ColdPlace place) {
    return place.months().gravest() != Risk.NONE;
  }

  private static List<ColdPlace> worstOfEach(CondensationResult cold) {
    Map<String, ColdPlace> worst = new LinkedHashMap<>();
    for (SurfaceClass kind : SurfaceClass.values()) {
      cold.coldestFirst().stream()
          .filter(p -> p.surface() == kind)
          .sorted(Comparator.comparingDouble(ColdPage::badness).reversed())
          .forEach(p -> worst.putIfAbsent(p.item(), p));
    }
    return List.copyOf(worst.values());
  }

  private static double badness(ColdPlace place) {
    return place.year().either(w -> w.mould().likely(), g -> g.wetMornings().likely());
  }

  private static Row row(Desk desk, ColdPlace place) {
    Numbers numbers = desk.numbers();
    MonthRow january = place.months().rows().get(0);
    return Cells.row(
        Cells.text(ColdChapter.named(place), small(desk, place)),
        Cells.text(numbers.plain(january.surface().likely(), Unit.CELSIUS, Rounding.DOWN)),
        Cells.text(numbers.plain(january.dewPoint().likely(), Unit.CELSIUS, Rounding.UP)),
        when(desk, place),
        Cells.text(stops(numbers, place)));
  }

  private static String small(Desk desk, ColdPlace place) {
    List<String> words = new ArrayList<>(List.of(place.kindWords()));
    Seen seen = place.seen();
    seen.mould()
        .filter(m -> m != MouldSeen.NONE)
        .ifPresent(m -> words.add("mould seen: " + m.word()));
    seen.condensation()
        .filter(c -> c != CondensationSeen.NEVER)
        .ifPresent(c -> words.add("water seen: " + c.word()));
    desk.photos().ofItem(place.item()).ifPresent(words::add);
    return String.join("; ", words);
  }

  private static Cell when(Desk desk, ColdPlace place) {
    return place
        .year()
        .either(wall -> growth(desk, wall, place.months()), glass -> mornings(desk, glass));
  }

  private static Cell growth(Desk desk, WallYear wall, MonthTable months) {
    return Cells.text(growth(wall), index(desk.numbers(), wall) + moist(months))
        .with(List.of(desk.index().mark(wall.mould())));
  }

  private static Cell mornings(Desk desk, GlassYear glass) {
    String mornings = desk.numbers().spread(glass.wetMornings().value(), Unit.DAYS_PER_YEAR);
    return Cells.text(
            mornings + (mornings.equals("1") ? " wet morning a year" : " wet mornings a year"),
            running(desk.numbers(), glass))
        .with(List.of(desk.index().mark(glass.wetMornings())));
  }

  private static String growth(WallYear wall) {
    return wall.begins()
        .map(
            b ->
                "growth from " + day(b) + wall.visible().map(v -> ", seen by " + day(v)).orElse(""))
        .orElse("too little growth to be seen, even with a microscope");
  }

  private static String index(Numbers numbers, WallYear wall) {
    return "mould index " + numbers.spread(wall.mould().value(), wall.mould().unit()) + "; ";
  }

  private static String moist(MonthTable months) {
    return "moist enough in " + Words.months(months.monthsAtRisk());
  }

  private static String running(Numbers numbers, GlassYear glass) {
    return "runs down on "
        + numbers.plain(glass.runningNights())
        + " nights; at most "
        + numbers.one(glass.worstNight().likely(), glass.worstNight().unit())
        + " in one night";
  }

  private static String day(DayOfYear day) {
    String part =
        switch (day.third()) {
          case 0 -> "early ";
          case 1 -> "mid ";
          default -> "late ";
        };
    return part + Words.month(day.month());
  }

  private static String stops(Numbers numbers, ColdPlace place) {
    MonthTable months = place.months();
    String dry =
        "below "
            + numbers.one(
                months.lowestDryHumidity().likely(),
                months.lowestDryHumidity().unit(),
                Rounding.DOWN)
            + " indoors";
    return dry + warmer(numbers, months);
  }

  /** By how much the surface would have to be warmer in its critical month. */
  private static String warmer(Numbers numbers, MonthTable months) {
    return months
        .criticalMonth()
        .map(m -> months.rows().get(m - 1))
        .flatMap(r -> r.margin().map(margin -> -margin.likely() * (r.indoor() - r.outdoor())))
        .filter(kelvin -> kelvin > 0)
        .map(kelvin -> ", or " + numbers.one(kelvin, Unit.KELVIN, Rounding.UP) + " warmer")
        .orElse("");
  }
}
