package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Unit;
import org.drysill.options.HourlySpread;
import org.drysill.options.PackagesResult;
import org.drysill.options.PackagesResult.FrontPoint;
import org.drysill.physics.Range;
import org.drysill.report.block.Block;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** Packages that none beats: a curve where they are many, a table where they are few. */
final class FrontBlocks {
  private final Desk desk;
  private final Numbers numbers;
  private final PackagesResult packages;
  private final String baseline;

  FrontBlocks(Desk desk, PackagesResult packages, String baseline) {
    this.desk = desk;
    this.numbers = desk.numbers();
    this.packages = packages;
    this.baseline = baseline;
  }

  List<Block> all() {
    List<Block> blocks = new ArrayList<>();
    Optional<ChartSpec> chart = PackageChart.of(desk, packages);
    if (chart.isPresent()) {
      blocks.add(ChartBlocks.wide("packages", chart.get()));
      glass().ifPresent(blocks::add);
    } else if (packages.front().stream().anyMatch(this::isToldHereAlone)) {
      blocks.add(table());
    }
    return blocks;
  }

  /** The home as it is and the best packages stand in a table of their own. */
  private boolean isToldHereAlone(FrontPoint point) {
    return point.name().isEmpty() && !isToday(point);
  }

  private boolean isToday(FrontPoint point) {
    return point.annualCost() == 0
        && point.mouldMonths() == packages.today().mouldMonths()
        && point.lacksM3S() == packages.today().lacks().likely();
  }

  private Block table() {
    return Grid.wide(
        PackageChart.title(numbers, packages),
        List.of(
            Cells.words("package"),
            Cells.numbers("all in all a year, " + numbers.unit(Unit.MONEY), 30),
            Cells.numbers("mould left, months", 30),
            Cells.numbers("air lacking, " + numbers.unit(Unit.AIRFLOW), 30),
            Cells.numbers("wet mornings", 36)),
        packages.front().stream().map(this::row).toList(),
        "Packages that none beats in cost and effect at once, likely values. Wet mornings: of a"
            + " year at the wettest window, where a package was followed hour by hour.");
  }

  private Row row(FrontPoint point) {
    Cell mornings =
        point
            .hourly()
            .map(h -> Cells.value(numbers, h.wetMornings(), Unit.COUNT, Rounding.NEAREST))
            .orElse(Cells.text(Cells.NOTHING));
    return Cells.row(
        Cells.text(isToday(point) ? baseline : point.name().isEmpty() ? "another" : point.name()),
        Cells.text(numbers.plain(point.annualCost(), Unit.MONEY, Rounding.NEAREST)),
        Cells.text(Integer.toString(point.mouldMonths())),
        Cells.text(numbers.plain(point.lacksM3S(), Unit.AIRFLOW, Rounding.UP)),
        mornings);
  }

  /** What the curve does for glass, where its ends were followed hour by hour. */
  private Optional<Block> glass() {
    List<Range> mornings =
        packages.front().stream()
            .flatMap(p -> p.hourly().stream())
            .map(HourlySpread::wetMornings)
            .toList();
    if (mornings.size() < 3) {
      return Optional.empty();
    }
    Range least = mornings.stream().min(Comparator.comparingDouble(Range::likely)).orElseThrow();
    Range most = mornings.stream().max(Comparator.comparingDouble(Range::likely)).orElseThrow();
    return Optional.of(
        new Prose(
            List.of(),
            "",
            "Glass along that curve.",
            Words.capital(Words.count(mornings.size(), "package", "packages"))
                + " of it were followed hour by hour in all samples. "
                + (most.high() < 1
                    ? "With none of them any window is seen to be wet in the morning."
                    : "Mornings with wet glass at the wettest window: from "
                        + numbers.spread(least, Unit.COUNT)
                        + " to "
                        + numbers.spread(most, Unit.COUNT)
                        + " a year.")));
  }
}
