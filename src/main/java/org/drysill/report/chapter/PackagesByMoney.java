package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.drysill.assess.Unit;
import org.drysill.options.PackagesResult;
import org.drysill.physics.Range;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** What more money buys: the glass along the front, and the best package for each sum. */
final class PackagesByMoney {
  private final Numbers numbers;
  private final PackagesResult packages;

  PackagesByMoney(PackageWords words) {
    this.numbers = words.numbers();
    this.packages = words.packages();
  }

  /** What the front does for glass, where its ends were followed hour by hour. */
  List<Block> front() {
    List<PackagesResult.FrontPoint> followed =
        packages.front().stream().filter(p -> p.hourly().isPresent()).toList();
    if (followed.size() <= 2) {
      return List.of();
    }
    List<Range> mornings =
        followed.stream().flatMap(p -> p.hourly().stream()).map(h -> h.wetMornings()).toList();
    Range least = mornings.stream().min(Comparator.comparingDouble(Range::likely)).orElseThrow();
    Range most = mornings.stream().max(Comparator.comparingDouble(Range::likely)).orElseThrow();
    return List.of(
        PackageWords.said(
            "Glass along that curve.",
            Words.capital(Words.count(followed.size(), "package", "packages"))
                + " of it were followed hour by hour in all samples. "
                + (most.high() < 1
                    ? "With none of them any window is seen to be wet in the morning."
                    : "Mornings with wet glass at the wettest window: from "
                        + numbers.spread(least, Unit.COUNT)
                        + " to "
                        + numbers.spread(most, Unit.COUNT)
                        + " a year.")));
  }

  /** The best package for each of some sums. */
  List<Block> budgets() {
    List<Block> blocks = new ArrayList<>();
    if (!packages.budgets().isEmpty()) {
      blocks.add(
          Grid.wide(
              "What a sum of money buys",
              List.of(
                  Cells.numbers("up to, " + numbers.unit(Unit.MONEY), 20),
                  Cells.words("the best package for it"),
                  Cells.numbers("first cost", 20),
                  Cells.numbers("mould left, months", 24),
                  Cells.numbers("air lacking, " + numbers.unit(Unit.AIRFLOW), 24)),
              packages.budgets().stream().map(this::row).toList(),
              "Likely first costs."));
    }
    return blocks;
  }

  private Row row(PackagesResult.BudgetBuys sum) {
    return Cells.row(
        Cells.text(numbers.plain(sum.money(), Unit.MONEY, Rounding.NEAREST)),
        Cells.text(String.join("; ", sum.titles()) + (sum.stopGap() ? " (with a stop-gap)" : "")),
        Cells.text(numbers.plain(sum.spent(), Unit.MONEY, Rounding.NEAREST)),
        Cells.text(Integer.toString(sum.mouldMonths())),
        Cells.text(numbers.plain(sum.lacksM3S(), Unit.AIRFLOW, Rounding.UP)));
  }
}
