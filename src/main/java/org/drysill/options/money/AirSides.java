package org.drysill.options.money;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.MoneyFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;
import org.drysill.physics.energy.FanEnergy;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.PriceUnit;

/** What a measure that moves some air costs, to buy, to run and over the horizon. */
final class AirSides {
  private static final double HOURS_PER_YEAR = 8760;

  private final MoneyFacts money;
  private final Prices prices;
  private final Figures figures;

  AirSides(MoneyFacts money, Prices prices, Figures figures) {
    this.money = money;
    this.prices = prices;
    this.figures = figures;
  }

  /**
   * A measure with its costs; empty where no price of it is known. A unit of a pair counts half of
   * the pair.
   *
   * @param id what its figures are called by
   * @param measure the measure
   * @param electricity its electricity [kWh/a]; as is usual where it is not known
   * @param heat energy for its air [kWh/a]
   */
  Optional<AirSide> of(String id, Measure measure, Optional<Figure> electricity, Figure heat) {
    double part = measure.price().unit() == PriceUnit.PAIR ? 0.5 : 1;
    return prices
        .each(measure)
        .flatMap(
            each ->
                prices
                    .upkeep(measure)
                    .map(
                        upkeep ->
                            side(
                                id,
                                measure,
                                electricity.orElseGet(() -> usual(id, measure, part)),
                                heat,
                                each.times(part),
                                upkeep.times(part))));
  }

  private AirSide side(
      String id, Measure measure, Figure electricity, Figure heat, Range price, Range upkeep) {
    Figure first = first(id, measure, price);
    Figure running = running(id, measure, electricity, heat, upkeep);
    return new AirSide(
        measure, first, heat, electricity, upkeep, annual(id, measure, first, running));
  }

  private Figure first(String id, Measure measure, Range price) {
    return figures.of(
        id + ".first_cost",
        "first cost of " + measure.name(),
        price,
        Unit.MONEY,
        Basis.ASSUMED,
        measure.price().unit() == PriceUnit.PAIR ? "half of the price of a pair" : "price",
        List.of(),
        List.of(measure.price().source()));
  }

  private Figure running(
      String id, Measure measure, Figure electricity, Figure heat, Range upkeep) {
    return figures.of(
        id + ".running_cost",
        "running cost in a year of " + measure.name(),
        heat.value()
            .times(money.heat().value())
            .plus(electricity.value().times(money.electricity().value()))
            .plus(upkeep),
        Unit.MONEY_PER_YEAR,
        "heat·p_heat + electricity·p_el + upkeep",
        List.of(
            Input.of("heat", heat),
            Input.of("electricity", electricity),
            Input.of("p_heat", money.heat()),
            Input.of("p_el", money.electricity()),
            Input.of("upkeep", "upkeep", upkeep, Unit.MONEY_PER_YEAR, Basis.ASSUMED)),
        List.of());
  }

  private Figure annual(String id, Measure measure, Figure first, Figure running) {
    Figure annual = new OverHorizon(money, measure.lifeYears(), first, running).annualCost(figures);
    return figures.of(
        id + ".annual_cost",
        "yearly cost over the horizon of " + measure.name(),
        annual.value(),
        Unit.MONEY_PER_YEAR,
        annual.working().formula(),
        annual.working().inputs(),
        List.of(WorthFigures.GLOBAL_COST));
  }

  /** Of a unit whose power nobody noted, and of a fan that is not there: as is usual. */
  private Figure usual(String id, Measure measure, double part) {
    Range power = measure.power().map(p -> p.range()).orElse(Range.exactly(0)).times(part);
    return figures.of(
        id + ".electricity",
        "electricity of " + measure.name() + " in a year",
        power.times(FanEnergy.electricityKwh(1, HOURS_PER_YEAR)),
        Unit.KWH_PER_YEAR,
        Basis.ASSUMED,
        "P·8760 h",
        List.of(Input.of("P", "usual power", power, Unit.WATT, Basis.ASSUMED)),
        List.of());
  }
}
