package org.drysill.options.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.options.Budget;
import org.drysill.options.RankedMeasure;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;
import org.drysill.reference.measures.MeasureCatalogue;
import org.drysill.survey.OptionWishes;

/** What the stated money buys: down the ranking, whatever still fits. */
public record Budgets(Home home, MeasureCatalogue catalogue) {

  /** Empty where the survey states no budget. */
  public Optional<Budget> of(List<RankedMeasure> ranked) {
    return home.survey().options().flatMap(OptionWishes::budget).map(b -> spend(b.range(), ranked));
  }

  private Budget spend(Range money, List<RankedMeasure> ranked) {
    List<RankedMeasure> bought = new ArrayList<>();
    List<String> words = new ArrayList<>();
    words.add("The money is spent down the ranking: each measure whose likely price still fits.");
    double spent = 0;
    for (RankedMeasure measure : ranked) {
      Optional<Double> cost = measure.money().firstCost().map(Figure::likely);
      if (cost.isEmpty() || excluded(measure, bought)) {
        continue;
      }
      if (spent + cost.get() <= money.likely()) {
        bought.add(measure);
        spent += cost.get();
      } else {
        words.add("Rank " + measure.rank() + ", " + measure.title() + ", no longer fits.");
      }
    }
    Figures figures = new Figures("budget");
    return new Budget(
        figure(figures, "money", "money at hand", money, Basis.DECLARED),
        bought.stream().map(RankedMeasure::id).toList(),
        figure(figures, "spent", "likely first cost", Range.exactly(spent), Basis.CALCULATED),
        words);
  }

  private boolean excluded(RankedMeasure measure, List<RankedMeasure> bought) {
    List<String> against =
        catalogue.measure(measure.measure()).map(m -> m.exclusions()).orElse(List.of());
    return bought.stream()
        .filter(
            b ->
                b.scope().rooms().isEmpty()
                    || measure.scope().rooms().isEmpty()
                    || b.scope().rooms().stream().anyMatch(measure.scope().rooms()::contains))
        .anyMatch(b -> against.contains(b.measure()));
  }

  private static Figure figure(Figures figures, String id, String name, Range value, Basis basis) {
    return figures.of(
        id, name, value, Unit.MONEY, basis, "Σ likely first costs", List.of(), List.of());
  }
}
