package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.options.PackagesResult.BudgetBuys;
import org.drysill.options.effect.Figures;
import org.drysill.options.rank.Purse;
import org.drysill.physics.Range;

/**
 * What sums of money buy: quarters of what the best package costs at the start, and the budget that
 * the survey states.
 */
record SumsOfMoney(Best pick, Candidates candidates, PackWriter writer, Purse purse) {
  private static final int PARTS = 4;

  /** One row for each sum that buys something else than a smaller one. */
  List<BudgetBuys> of(List<PackValue> best) {
    List<BudgetBuys> rows = new ArrayList<>();
    List<PackValue> bought = new ArrayList<>();
    for (double sum : sums(best)) {
      pick.of(v -> v.bill().first() <= sum)
          .filter(v -> v.size() > 0 && !bought.contains(v))
          .ifPresent(
              v -> {
                bought.add(v);
                rows.add(row(rows.size() + 1, sum, v));
              });
    }
    return rows;
  }

  private List<Double> sums(List<PackValue> best) {
    double whole = best.stream().findFirst().map(v -> v.bill().first()).orElse(0.0);
    Stream<Double> parts =
        Stream.iterate(1, i -> i <= PARTS, i -> i + 1).map(i -> i * whole / PARTS);
    return Stream.concat(parts, purse.money().map(Range::likely).stream())
        .filter(s -> s > 0)
        .distinct()
        .sorted()
        .toList();
  }

  private BudgetBuys row(int number, double sum, PackValue value) {
    Figures figures = new Figures("package.sum" + number);
    return new BudgetBuys(
        money(figures, "money", "money at hand", sum, Basis.ASSUMED),
        candidates.in(value).stream().map(m -> m.candidate().title()).toList(),
        money(figures, "spent", "first cost", value.bill().first(), Basis.CALCULATED),
        value.mould(),
        writer.lacks(figures, "lacks", value));
  }

  private static Figure money(Figures figures, String id, String name, double sum, Basis basis) {
    return figures.of(
        id, name, Range.exactly(sum), Unit.MONEY, basis, "Σ first costs", List.of(), List.of());
  }
}
