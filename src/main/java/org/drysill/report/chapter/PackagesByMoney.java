package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.Unit;
import org.drysill.options.PackagesResult;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;

/** What more money buys: the best package for each sum. */
final class PackagesByMoney {
  private final Numbers numbers;
  private final PackagesResult packages;

  PackagesByMoney(PackageWords words) {
    this.numbers = words.numbers();
    this.packages = words.packages();
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
