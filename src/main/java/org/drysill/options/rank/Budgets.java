package org.drysill.options.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.options.Budget;
import org.drysill.options.FirstThing;
import org.drysill.options.MeasureMoney;
import org.drysill.options.RankedMeasure;
import org.drysill.options.SurfaceChange;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;
import org.drysill.reference.measures.MeasureCatalogue;

/** What the stated money buys: first what cannot wait, then down the ranking, whatever fits. */
public record Budgets(Purse purse, MeasureCatalogue catalogue) {

  /** Empty where the survey states no budget. */
  public Optional<Budget> of(List<FirstThing> first, List<RankedMeasure> ranked) {
    return purse.money().map(m -> spend(m, first, ranked));
  }

  private Budget spend(Range money, List<FirstThing> first, List<RankedMeasure> ranked) {
    List<FirstThing> mended = first.stream().filter(f -> f.money().isPresent()).toList();
    double spent =
        mended.stream().mapToDouble(f -> cost(f.money().orElseThrow()).orElse(0.0)).sum();
    List<RankedMeasure> bought = new ArrayList<>();
    for (RankedMeasure measure : ranked.stream().filter(RankedMeasure::admissible).toList()) {
      Optional<Double> cost = cost(measure.money());
      boolean fits = cost.filter(c -> c <= 0 || adds(measure, bought)).isPresent();
      if (fits && !excluded(measure, bought) && spent + cost.orElseThrow() <= money.likely()) {
        bought.add(measure);
        spent += cost.orElseThrow();
      }
    }
    Figures figures = new Figures("budget");
    return new Budget(
        figure(figures, "money", "money at hand", money, Basis.DECLARED, "as stated in the survey"),
        bought.stream().map(RankedMeasure::id).toList(),
        figure(
            figures,
            "spent",
            "likely first cost",
            Range.exactly(spent),
            Basis.CALCULATED,
            "Σ likely first costs"),
        words(first, mended, bought, money.likely() - spent));
  }

  private List<String> words(
      List<FirstThing> first, List<FirstThing> mended, List<RankedMeasure> bought, double left) {
    List<String> words = new ArrayList<>();
    words.add(
        "Down the ranking, each measure that still fits, needs no safety test first and does"
            + " something that those bought before it do not; effects are not added up.");
    if (!mended.isEmpty()) {
      words.add(
          "First "
              + mended.stream().map(FirstThing::title).collect(Collectors.joining("; "))
              + ".");
    }
    if (mended.size() < first.size()) {
      words.add("What else comes before every measure is not in the sum.");
    }
    words.add(
        bought.isEmpty()
            ? "No ranked measure fits."
            : "Then "
                + bought.stream()
                    .map(m -> m.title() + " (" + purse.words(cost(m.money()).orElse(0.0)) + ")")
                    .collect(Collectors.joining("; "))
                + ".");
    words.add(
        left >= 0
            ? purse.words(left) + " is left."
            : purse.words(-left) + " is lacking for what comes first.");
    return words;
  }

  private static Optional<Double> cost(MeasureMoney money) {
    return money.firstCost().map(Figure::likely);
  }

  /** True where some place or the air is better off, or more is settled, than with any bought. */
  private static boolean adds(RankedMeasure measure, List<RankedMeasure> bought) {
    List<SurfaceChange> better =
        measure.effect().surfaces().stream()
            .filter(s -> s.monthsAfter().likely() < s.monthsBefore())
            .toList();
    return settlesMore(measure, bought)
        || bought.stream().noneMatch(b -> asGood(b, measure, better));
  }

  private static boolean settlesMore(RankedMeasure measure, List<RankedMeasure> bought) {
    return measure.effect().settles().stream()
        .anyMatch(s -> bought.stream().noneMatch(b -> b.effect().settles().contains(s)));
  }

  private static boolean asGood(
      RankedMeasure bought, RankedMeasure measure, List<SurfaceChange> better) {
    return lacks(bought) <= lacks(measure)
        && better.stream().allMatch(s -> monthsAfter(bought, s) <= s.monthsAfter().likely());
  }

  private static double monthsAfter(RankedMeasure bought, SurfaceChange place) {
    return bought.effect().surfaces().stream()
        .filter(s -> s.place().equals(place.place()))
        .mapToDouble(s -> s.monthsAfter().likely())
        .findFirst()
        .orElse(place.monthsBefore());
  }

  private static double lacks(RankedMeasure measure) {
    return measure.effect().lacksAfter().map(Figure::likely).orElse(0.0);
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

  private static Figure figure(
      Figures figures, String id, String name, Range value, Basis basis, String formula) {
    return figures.of(id, name, value, Unit.MONEY, basis, formula, List.of(), List.of());
  }
}
