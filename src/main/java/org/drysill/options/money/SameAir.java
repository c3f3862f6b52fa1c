package org.drysill.options.money;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.options.MeasureMoney;
import org.drysill.options.OptionsBasis;
import org.drysill.options.Payback;
import org.drysill.options.effect.Figures;

/**
 * Compares each measure that brings air with the cheapest other one that brings as much. The other
 * one is taken as if it ran at the same flow, so that it is charged for no more air.
 */
public final class SameAir {
  private final List<Costed> all;
  private final double same;
  private final PaybackWords words;

  /** Among all measures that were costed. */
  public SameAir(List<Costed> all, OptionsBasis basis) {
    this.all = List.copyOf(all);
    this.same = basis.defaults().sameAir().likely();
    this.words = new PaybackWords(basis.defaults());
  }

  /** The measure with the comparison filled in. */
  public Costed compared(Costed costed) {
    MeasureMoney m = costed.money();
    return new Costed(
        costed.studied(),
        new MeasureMoney(
            m.price(),
            m.firstCost(),
            m.heatLost(),
            m.heatSaved(),
            m.electricity(),
            m.energyCost(),
            m.upkeep(),
            m.runningCost(),
            m.co2(),
            m.globalCost(),
            m.annualCost(),
            m.againstNothing(),
            payback(costed),
            m.notTold()));
  }

  private Optional<Payback> payback(Costed costed) {
    if (costed.studied().addedAir() <= 0) {
      return Optional.empty();
    }
    return cheapest(costed)
        .map(
            other ->
                words.of(
                    new Figures(costed.studied().candidate().id()),
                    "payback_same_air",
                    "the same air by " + other.studied().candidate().measure().name(),
                    costed.firstCost().map(f -> f - other.firstCost().orElse(0.0)),
                    running(other, costed.studied().addedAir()) - running(costed)));
  }

  private Optional<Costed> cheapest(Costed costed) {
    double air = costed.studied().addedAir();
    return all.stream()
        .filter(o -> !o.studied().candidate().id().equals(costed.studied().candidate().id()))
        .filter(o -> o.studied().addedAir() >= same * air && o.firstCost().isPresent())
        .min(
            Comparator.comparingDouble((Costed o) -> running(o, air) + yearly(o))
                .thenComparing(o -> o.studied().candidate().id()));
  }

  private static double yearly(Costed costed) {
    return costed.annualCost().orElse(0.0) - running(costed);
  }

  private static double running(Costed costed) {
    return costed.money().runningCost().map(Figure::likely).orElse(0.0);
  }

  /** Running cost with the heat of the added air charged for a smaller flow. */
  private static double running(Costed costed, double air) {
    double share = Math.min(1, air / costed.studied().addedAir());
    double rest = costed.money().upkeep().map(Figure::likely).orElse(0.0) + powerCost(costed);
    return heatCost(costed) * share + rest;
  }

  private static double heatCost(Costed costed) {
    return costed.money().energyCost().map(Figure::likely).orElse(0.0) - powerCost(costed);
  }

  private static double powerCost(Costed costed) {
    return costed.money().energyCost().stream()
        .flatMap(f -> f.working().inputs().stream())
        .filter(i -> i.symbol().equals("p_el"))
        .mapToDouble(i -> i.value().likely() * costed.money().electricity().likely())
        .sum();
  }
}
