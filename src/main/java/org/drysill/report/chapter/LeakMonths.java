package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.provided.LeaksByMonth;
import org.drysill.report.block.Block;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Column;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Subhead;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.MonthLines;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** Leaks by month, by warmth and wind, beside the rule that divides the test result. */
final class LeakMonths {
  private static final int COLUMN_MM = 11;

  private LeakMonths() {}

  static List<Block> of(Desk desk) {
    Subhead head = new Subhead(List.of(), "Air through leaks by month");
    return desk.subject()
        .ventilation()
        .provided()
        .leaksByMonth()
        .map(leaks -> List.of(head, told(desk, leaks), chart(desk, leaks), table(desk, leaks)))
        .orElse(
            List.of(
                head,
                new Prose(
                    List.of(),
                    "",
                    "",
                    "How it varies by month is not reckoned: the climate table has no wind.")));
  }

  private static Block told(Desk desk, LeaksByMonth leaks) {
    double share = leaks.coldSeason().likely() / leaks.byDivisor().likely() - 1;
    long percent = Math.round(100 * Math.abs(share));
    String differ =
        percent < 5
            ? "the two agree"
            : "warmth and wind say " + percent + " % " + (share > 0 ? "more" : "less");
    return new Prose(
        desk.notes(Stream.of(leaks.coldSeason(), leaks.byDivisor()).map(Optional::of).toList()),
        "",
        "",
        "In the cold season warmth and wind drive "
            + desk.numbers().likely(leaks.coldSeason())
            + " through the leaks; the rule that divides the test result says "
            + desk.numbers().likely(leaks.byDivisor())
            + " at any time: "
            + differ
            + ". Both lie within the range that the verdict rests on.");
  }

  private static Block chart(Desk desk, LeaksByMonth leaks) {
    List<Double> weather = new ArrayList<>(line(desk, leaks));
    double divisor = desk.numbers().onAxis(leaks.byDivisor().likely(), Unit.AIR_CHANGE);
    double most = Math.max(divisor, Collections.max(weather));
    Comparator<LeaksByMonth.Month> byAir = Comparator.comparingDouble(m -> m.airChange().likely());
    LeaksByMonth.Month top = leaks.months().stream().max(byAir).orElseThrow();
    LeaksByMonth.Month least = leaks.months().stream().min(byAir).orElseThrow();
    String title =
        "Leaks give most in "
            + Words.month(top.number())
            + ", "
            + desk.numbers().likely(top.airChange())
            + ", and least in "
            + Words.month(least.number())
            + ", "
            + desk.numbers().likely(least.airChange());
    ChartSpec spec =
        new MonthLines(
            new ChartText(
                title,
                desk.numbers().unit(Unit.AIR_CHANGE),
                "By the monthly means of temperature and wind",
                title + "."),
            Axis.fromZero(most, 4),
            MonthLines.JULY_FIRST,
            List.of(
                new MonthLines.Line("by warmth and wind", weather, MonthLines.Style.MAIN),
                new MonthLines.Line(
                    "by the divisor", Collections.nCopies(12, divisor), MonthLines.Style.LIMIT)),
            Optional.empty());
    return ChartBlocks.of("leaks", spec);
  }

  private static List<Double> line(Desk desk, LeaksByMonth leaks) {
    return julyFirst(leaks)
        .map(m -> desk.numbers().onAxis(m.airChange().likely(), Unit.AIR_CHANGE))
        .toList();
  }

  private static Stream<LeaksByMonth.Month> julyFirst(LeaksByMonth leaks) {
    return IntStream.range(0, 12).mapToObj(i -> leaks.months().get((i + 6) % 12));
  }

  private static Block table(Desk desk, LeaksByMonth leaks) {
    List<Column> columns = new ArrayList<>(List.of(Cells.words("through leaks")));
    julyFirst(leaks)
        .forEach(
            m -> columns.add(Cells.numbers(Words.month(m.number()).substring(0, 3), COLUMN_MM)));
    return Grid.wide(
            "",
            columns,
            List.of(
                row(desk, leaks, Unit.AIR_CHANGE, LeaksByMonth.Month::airChange),
                row(desk, leaks, Unit.AIRFLOW, LeaksByMonth.Month::flow)),
            "")
        .densely();
  }

  private static Row row(
      Desk desk, LeaksByMonth leaks, Unit unit, Function<LeaksByMonth.Month, Figure> value) {
    List<Cell> cells = new ArrayList<>(List.of(Cells.text(desk.numbers().unit(unit))));
    julyFirst(leaks)
        .map(value)
        .forEach(
            f -> cells.add(Cells.text(desk.numbers().plain(f.likely(), unit, Rounding.NEAREST))));
    return new Row(cells, false);
  }
}
