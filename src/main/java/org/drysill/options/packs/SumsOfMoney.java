package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drysill.options.PackagesResult.BudgetBuys;
import org.drysill.options.rank.Purse;
import org.drysill.physics.Range;

/**
 * What sums of money buy: quarters of what the best package costs at the start, and the budget that
 * the survey states.
 */
record SumsOfMoney(SureBest pick, Candidates candidates, Purse purse) {
  private static final int PARTS = 4;

  /** Sums are rounded up to a multiple of this, as people name them [currency]. */
  private static final double ROUND = 50;

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
                rows.add(row(sum, v));
              });
    }
    return rows;
  }

  private List<Double> sums(List<PackValue> best) {
    double whole = best.stream().findFirst().map(v -> v.bill().first()).orElse(0.0);
    Stream<Double> parts =
        Stream.iterate(1, i -> i <= PARTS, i -> i + 1)
            .map(i -> Math.ceil(i * whole / PARTS / ROUND) * ROUND);
    return Stream.concat(parts, purse.money().map(Range::likely).stream())
        .filter(s -> s > 0)
        .distinct()
        .sorted()
        .toList();
  }

  private BudgetBuys row(double sum, PackValue value) {
    return new BudgetBuys(
        sum,
        candidates.in(value).stream().map(m -> m.candidate().title()).toList(),
        value.bill().first(),
        value.stopGap(),
        value.mould(),
        value.lacks());
  }
}
