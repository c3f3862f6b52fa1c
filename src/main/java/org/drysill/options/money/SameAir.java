package org.drysill.options.money;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.options.MeasureMoney;
import org.drysill.options.OptionsBasis;
import org.drysill.options.Payback;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;

/**
 * Compares each measure that brings air with the cheapest one that brings as much. The other one is
 * taken as if it ran at the same flow, so that it is charged for the heat of no more air.
 */
public final class SameAir {
  private final List<Costed> all;
  private final double same;
  private final PaybackWords words;

  /** Among all measures that were costed. */
  public SameAir(List<Costed> all, OptionsBasis basis, String currency) {
    this.all = List.copyOf(all);
    this.same = basis.defaults().sameAir().likely();
    this.words = new PaybackWords(basis.defaults(), currency);
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
            m.notTold()),
        costed.heatCost(),
        costed.parts());
  }

  /** Empty for what brings no air, and where nothing else brings as much. */
  private Optional<Payback> payback(Costed costed) {
    double air = costed.studied().addedAir();
    return air > 0 ? cheapest(costed, air).map(o -> against(costed, o, air)) : Optional.empty();
  }

  private Payback against(Costed costed, Costed other, double air) {
    String name = "the same air by " + other.studied().candidate().measure().name();
    if (costed.firstCost().isEmpty()) {
      return words.notTold(name);
    }
    if (costed.annualCost().orElseThrow() <= yearly(other, air)) {
      return words.cheapest();
    }
    double extra = costed.firstCost().orElseThrow() - other.firstCost().orElseThrow();
    double saving = other.runningCost() - spared(other, air) - costed.runningCost();
    return words.of(
        new Figures(costed.studied().candidate().id()),
        "payback_same_air",
        name,
        Range.exactly(extra),
        Range.exactly(saving),
        costed.studied().candidate().measure().lifeYears());
  }

  private Optional<Costed> cheapest(Costed costed, double air) {
    return all.stream()
        .filter(o -> !id(o).equals(id(costed)))
        .filter(o -> o.studied().addedAir() >= same * air && o.annualCost().isPresent())
        .min(Comparator.comparingDouble((Costed o) -> yearly(o, air)).thenComparing(SameAir::id));
  }

  private static String id(Costed costed) {
    return costed.studied().candidate().id();
  }

  /** Yearly cost over the horizon at a smaller flow. */
  private static double yearly(Costed costed, double air) {
    return costed.annualCost().orElseThrow() - spared(costed, air);
  }

  /** Cost of heat that the air spares which it would not have to bring [currency/a]. */
  private static double spared(Costed costed, double air) {
    return costed.heatCost() * (1 - Math.min(1, air / costed.studied().addedAir()));
  }
}
