package org.drysill.options.money;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.MoneyFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.options.MeasureMoney;
import org.drysill.options.OptionsBasis;
import org.drysill.options.Price;
import org.drysill.options.effect.Figures;
import org.drysill.options.effect.Studied;
import org.drysill.physics.Range;
import org.drysill.physics.energy.GlobalCost;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.measures.Measure;

/** What single measures cost and save. */
public final class MoneyStudy {
  private static final Citation GLOBAL_COST =
      Citation.of("EN 15459-1", "2017", "global cost and payback", How.MEMORY);
  private static final Citation HEAT =
      Citation.of("EN ISO 13789", "2017", "0.34 Wh/(m³·K); monthly as EN ISO 52016-1", How.MEMORY);

  private final MoneyFacts money;
  private final Prices prices;
  private final EnergyUses energy;
  private final Carbon carbon;
  private final PaybackWords words;

  /** For an assessment and what is published. */
  public MoneyStudy(Assessment assessment, OptionsBasis basis) {
    this.money = assessment.home().money();
    this.prices = new Prices(assessment.home());
    HeatYear year = new HeatYear(assessment.home(), basis.defaults().gains().range());
    this.energy = new EnergyUses(assessment, basis, year);
    this.carbon = new Carbon(assessment.home(), basis);
    this.words = new PaybackWords(basis.defaults());
  }

  /** The money of a candidate; the comparison with others follows in {@link SameAir}. */
  public Costed of(Studied studied) {
    Measure measure = studied.candidate().measure();
    Figures figures = new Figures(studied.candidate().id());
    EnergyUse use = energy.of(studied);
    Figure lost = energy(figures, "heat_lost", "energy for heat that it takes", use.heatLost());
    Figure saved = energy(figures, "heat_saved", "energy for heat that it saves", use.heatSaved());
    Figure power = energy(figures, "electricity", "electricity that it uses", use.electricity());
    Range cost =
        Signed.product(use.heatLost().minus(use.heatSaved()), money.heat().value())
            .plus(use.electricity().times(money.electricity().value()));
    Figure energyCost =
        figures.of(
            "energy_cost",
            "cost of energy in a year",
            cost,
            Unit.MONEY_PER_YEAR,
            "(heat lost − heat saved)·p_heat + electricity·p_el",
            List.of(
                Input.of("heat lost", lost),
                Input.of("heat saved", saved),
                Input.of("p_heat", money.heat()),
                Input.of("electricity", power),
                Input.of("p_el", money.electricity())),
            List.of());
    Optional<Price> price = prices.of(studied.candidate());
    Optional<Range> upkeep = prices.upkeep(measure);
    Range running = cost.plus(upkeep.orElse(Range.exactly(0)));
    Optional<Range> first = price.map(p -> p.each().times(p.count()));
    Optional<Figure> firstCost = first.map(f -> firstCost(figures, f, price.orElseThrow()));
    Figure runningCost =
        figures.of(
            "running_cost",
            "running cost in a year",
            running,
            Unit.MONEY_PER_YEAR,
            "energy + upkeep",
            List.of(Input.of("energy", energyCost)),
            List.of());
    return new Costed(
        studied,
        new MeasureMoney(
            price,
            firstCost,
            lost,
            saved,
            power,
            Optional.of(energyCost),
            upkeep.map(u -> upkeep(figures, u, measure)),
            Optional.of(runningCost),
            carbon.of(figures, use),
            first.map(f -> overHorizon(figures, "global_cost", f, running, measure, false)),
            first.map(f -> overHorizon(figures, "annual_cost", f, running, measure, true)),
            words.againstNothing(figures, first, running),
            Optional.empty(),
            notTold(price, upkeep)));
  }

  private Optional<String> notTold(Optional<Price> price, Optional<Range> upkeep) {
    List<String> missing = new ArrayList<>();
    if (price.isEmpty()) {
      missing.add("its price");
    }
    if (upkeep.isEmpty()) {
      missing.add("its upkeep");
    }
    return missing.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Default prices are not in "
                + money.currency()
                + " and none are converted: "
                + String.join(" and ", missing)
                + " cannot be told until the survey gives a quote.");
  }

  private static Figure energy(Figures figures, String id, String name, Range value) {
    return figures.of(
        id,
        name,
        value,
        Unit.KWH_PER_YEAR,
        "Q = 0.34·q·Σ max(0, Tb − Te)·24·d / η; W = P·t",
        List.of(),
        List.of(HEAT));
  }

  private static Figure firstCost(Figures figures, Range first, Price price) {
    return figures.of(
        "first_cost",
        "first cost, " + price.standing(),
        first,
        Unit.MONEY,
        price.quoted() ? Basis.DECLARED : Basis.ASSUMED,
        "price × count",
        List.of(),
        price.source().map(List::of).orElse(List.of()));
  }

  private static Figure upkeep(Figures figures, Range upkeep, Measure measure) {
    return figures.of(
        "upkeep",
        "upkeep in a year",
        upkeep,
        Unit.MONEY_PER_YEAR,
        Basis.ASSUMED,
        "usual upkeep",
        List.of(),
        List.of(measure.price().source()));
  }

  private Figure overHorizon(
      Figures figures, String id, Range first, Range running, Measure measure, boolean perYear) {
    Range value =
        new Range(
            overHorizon(first.low(), running.low(), measure, perYear),
            overHorizon(first.likely(), running.likely(), measure, perYear),
            overHorizon(first.high(), running.high(), measure, perYear));
    return figures.of(
        id,
        perYear ? "yearly cost over the horizon" : "global cost over the horizon",
        value,
        perYear ? Unit.MONEY_PER_YEAR : Unit.MONEY,
        "Cg = CI·(1 + Σ d(k·life)) + Ca·f(τ) − V·d(τ)" + (perYear ? ", times a(τ)" : ""),
        List.of(Input.of("r", money.discountRate()), Input.of("τ", money.horizon())),
        List.of(GLOBAL_COST));
  }

  private double overHorizon(double first, double running, Measure measure, boolean perYear) {
    GlobalCost cost =
        new GlobalCost(
            first, measure.lifeYears(), money.horizon().likely(), money.discountRate().likely());
    return perYear ? cost.perYear(running) : cost.total(running);
  }
}
