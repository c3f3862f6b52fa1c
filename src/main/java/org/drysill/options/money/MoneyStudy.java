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
import org.drysill.reference.measures.Measure;

/** What single measures cost and save. */
public final class MoneyStudy {
  private final MoneyFacts money;
  private final Prices prices;
  private final HeatYear year;
  private final EnergyUses energy;
  private final WarmedFabric fabric;
  private final Carbon carbon;
  private final PaybackWords words;

  /** For an assessment and what is published. */
  public MoneyStudy(Assessment assessment, OptionsBasis basis) {
    this.money = assessment.home().money();
    this.prices = new Prices(assessment.home(), Areas.of(basis.defaults()));
    this.year = new HeatYear(assessment.home(), basis.defaults().gains().range());
    this.energy = new EnergyUses(assessment, basis, year, new Recovered(assessment, basis));
    this.fabric = new WarmedFabric(assessment, basis);
    this.carbon = new Carbon(assessment.home(), basis);
    this.words = new PaybackWords(basis.defaults(), money.currency());
  }

  /** The money of a candidate; the comparison with others follows in {@link SameAir}. */
  public Costed of(Studied studied) {
    Measure measure = studied.candidate().measure();
    Figures figures = new Figures(studied.candidate().id());
    EnergyUse use = energy.of(studied);
    EnergyBill bill = EnergyBill.of(figures, use, money);
    Optional<Price> price = prices.of(studied.candidate());
    Optional<Range> upkeep = prices.upkeep(measure);
    Range running = bill.cost().value().plus(upkeep.orElse(Range.exactly(0)));
    Optional<Range> first = price.map(p -> p.each().times(p.count()));
    Optional<Figure> firstCost = first.map(f -> firstCost(figures, f, price.orElseThrow()));
    Optional<Figure> upkeepCost = upkeep.map(u -> upkeep(figures, u, measure));
    Figure runningCost = runningCost(figures, running, bill, upkeepCost);
    Optional<OverHorizon> horizon =
        firstCost.map(f -> new OverHorizon(money, measure.lifeYears(), f, runningCost));
    return new Costed(
        studied,
        new MeasureMoney(
            price,
            firstCost,
            bill.lost(),
            bill.saved(),
            bill.electricity(),
            Optional.of(bill.cost()),
            upkeepCost,
            Optional.of(runningCost),
            carbon.of(figures, use, bill),
            horizon.map(h -> h.globalCost(figures)),
            horizon.map(h -> h.annualCost(figures)),
            words.againstNothing(figures, first, running, measure.lifeYears()),
            Optional.empty(),
            NotTold.of(
                fabric.leavesOutAWall(studied.candidate()), money.currency(), price, upkeep)),
        bill.heatCost(),
        horizon.map(
            h ->
                h.parts(upkeep.map(Range::likely).orElse(0.0), bill.powerCost(), bill.heatCost())));
  }

  /** What warming one more cubic metre of outdoor air a second takes in a year, likely. */
  public AirBill airBill() {
    double energy = year.perFlow().likely();
    return new AirBill(
        energy, energy * money.heat().value().likely(), energy * carbon.heatKgPerKwh());
  }

  /** Energy that warms one more cubic metre of outdoor air a second over a year [kWh/a]. */
  public Range heatOfAir() {
    return year.perFlow();
  }

  /** Share of its heat that the air of a new exchanger keeps [1]; 0 for what exchanges none. */
  public Range kept(Measure measure) {
    return measure.air().map(energy.recovered()::by).orElse(Range.exactly(0));
  }

  private static Figure runningCost(
      Figures figures, Range running, EnergyBill bill, Optional<Figure> upkeep) {
    List<Input> inputs = new ArrayList<>(List.of(Input.of("energy", bill.cost())));
    upkeep.ifPresent(u -> inputs.add(Input.of("upkeep", u)));
    return figures.of(
        "running_cost",
        "running cost in a year",
        running,
        Unit.MONEY_PER_YEAR,
        "energy + upkeep",
        inputs,
        List.of());
  }

  private static Figure firstCost(Figures figures, Range first, Price price) {
    Basis basis = price.quoted() ? Basis.DECLARED : Basis.ASSUMED;
    return figures.of(
        "first_cost",
        "first cost, " + price.standing(),
        first,
        Unit.MONEY,
        basis,
        "price × count",
        List.of(
            Input.of("price", "price for one", price.each(), Unit.MONEY, basis),
            Input.of("count", price.unit(), Range.exactly(price.count()), Unit.COUNT, basis)),
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
}
