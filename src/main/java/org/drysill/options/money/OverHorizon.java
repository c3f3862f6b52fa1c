package org.drysill.options.money;

import java.util.List;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.MoneyFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.options.CostParts;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;
import org.drysill.physics.energy.GlobalCost;
import org.drysill.physics.energy.PresentValue;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/**
 * First and yearly cost over the horizon: as one sum of today, and as equal yearly payments. The
 * ends pair the lowest price with the lowest running cost, and the highest with the highest. At a
 * rate below 0 the value that is left of what outlasts the horizon may be worth more today than its
 * price: then the dearer one is the lower end.
 */
record OverHorizon(MoneyFacts money, int lifeYears, Figure first, Figure running) {
  private static final Citation GLOBAL_COST =
      Citation.of("EN 15459-1", "2017", "global cost and payback", How.MEMORY);
  private static final String FORMULA = "Cg = CI·(1 + Σ d(k·life)) + Ca·f(τ) − V·d(τ)";

  Figure globalCost(Figures figures) {
    return figures.of(
        "global_cost",
        "global cost over the horizon",
        each((cost, yearly) -> cost.total(yearly)),
        Unit.MONEY,
        FORMULA,
        inputs(),
        List.of(GLOBAL_COST));
  }

  Figure annualCost(Figures figures) {
    return figures.of(
        "annual_cost",
        "yearly cost over the horizon",
        each((cost, yearly) -> cost.perYear(yearly)),
        Unit.MONEY_PER_YEAR,
        FORMULA + ", times a(τ)",
        inputs(),
        List.of(GLOBAL_COST));
  }

  /**
   * The parts of the likely global cost.
   *
   * @param upkeep in a year [currency/a]
   * @param electricity cost of electricity in a year [currency/a]
   * @param heat cost of heat in a year [currency/a]
   */
  CostParts parts(double upkeep, double electricity, double heat) {
    double rate = money.discountRate().likely();
    double horizon = money.horizon().likely();
    GlobalCost cost = new GlobalCost(first.likely(), lifeYears, horizon, rate);
    double each = PresentValue.annuityPresentValueFactor(rate, horizon);
    return new CostParts(
        first.likely(),
        cost.purchases() - first.likely(),
        upkeep * each,
        electricity * each,
        heat * each,
        -cost.finalValue() * PresentValue.discountFactor(rate, horizon));
  }

  /** The sums rise with what it costs in a year; below a rate of 0 not always with the price. */
  private Range each(Sum sum) {
    Range price = first.value();
    Range yearly = running.value();
    return new Range(
        Math.min(at(price.low(), yearly.low(), sum), at(price.high(), yearly.low(), sum)),
        at(price.likely(), yearly.likely(), sum),
        Math.max(at(price.low(), yearly.high(), sum), at(price.high(), yearly.high(), sum)));
  }

  private double at(double price, double yearly, Sum sum) {
    return sum.of(
        new GlobalCost(price, lifeYears, money.horizon().likely(), money.discountRate().likely()),
        yearly);
  }

  private List<Input> inputs() {
    return List.of(
        Input.of("CI", first),
        Input.of("Ca", running),
        Input.of("life", "usual life", Range.exactly(lifeYears), Unit.YEARS, Basis.ASSUMED),
        Input.of("r", money.discountRate()),
        Input.of("τ", money.horizon()));
  }

  /** One of the two sums. */
  private interface Sum {
    double of(GlobalCost cost, double yearly);
  }
}
