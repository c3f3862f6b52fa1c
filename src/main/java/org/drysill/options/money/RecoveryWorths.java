package org.drysill.options.money;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.drysill.assess.Assessment;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.MoneyFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.assess.recovery.RecoveryUnit;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.options.OptionsBasis;
import org.drysill.options.RecoveryWorth;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;
import org.drysill.physics.energy.FanEnergy;
import org.drysill.physics.energy.GlobalCost;
import org.drysill.physics.energy.PresentValue;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.PriceUnit;

/**
 * What a heat-recovery unit is worth beside the cheapest measure that moves the same air.
 *
 * <pre>
 * saves = kept·p_heat − (W − W')·p_el − (u − u')        left = saves − (CI·A − CI'·A')
 * </pre>
 *
 * <p>kept energy that its recovery keeps, W electricity, u upkeep, CI·A first cost as equal yearly
 * payments with every replacement in the horizon; primed of the other measure, which moves the same
 * air and so loses the heat of all of it. The heat of the air as such is common to both and is in
 * neither difference, so its doubt does not widen it. A unit of a pair counts half of the pair.
 */
final class RecoveryWorths {
  private static final double HOURS_PER_YEAR = 8760;
  private static final Citation GLOBAL_COST =
      Citation.of("EN 15459-1", "2017", "global cost", How.MEMORY);

  private final Assessment assessment;
  private final MoneyFacts money;
  private final HeatYear year;
  private final Prices prices;
  private final PaybackWords words;
  private final OtherAir other;

  RecoveryWorths(Assessment assessment, OptionsBasis basis, HeatYear year) {
    this.assessment = assessment;
    this.money = assessment.home().money();
    this.year = year;
    this.prices = new Prices(assessment.home(), Areas.of(basis.defaults()));
    this.words = new PaybackWords(basis.defaults(), money.currency());
    this.other =
        new OtherAir(
            assessment.home(), basis.catalogue().measures(), basis.defaults().sameAir().likely());
  }

  /**
   * The comparison; empty where no price of the unit or of any other measure is known.
   *
   * @param unit the unit
   * @param like the measure that brings such a unit
   * @param kept energy that its recovery keeps [kWh/a]
   * @param lost energy for its air after recovery [kWh/a]
   * @param electricity its electricity [kWh/a]; empty where its power is not known
   */
  Optional<RecoveryWorth> of(
      FanFlow unit, Measure like, Figure kept, Figure lost, Optional<Figure> electricity) {
    Figures figures = new Figures("fan." + unit.fan().id() + ".worth");
    Figure heat = heat(figures, unit);
    return side(figures, "unit", like, electricity, lost)
        .flatMap(
            own ->
                other.of(unit).stream()
                    .flatMap(m -> side(figures, "other", m, Optional.empty(), heat).stream())
                    .min(
                        Comparator.comparingDouble((Side s) -> s.annual().likely())
                            .thenComparing(s -> s.measure().id()))
                    .map(cheapest -> compared(figures, unit, kept, own, cheapest)));
  }

  private RecoveryWorth compared(
      Figures figures, FanFlow unit, Figure kept, Side own, Side cheapest) {
    Figure saves = saves(figures, kept, own, cheapest);
    Figure left = left(figures, saves, own, cheapest);
    return new RecoveryWorth(
        assessment.recovery().unit(unit.fan().id()).flatMap(RecoveryUnit::measured).isPresent(),
        own.first(),
        own.heat(),
        kept,
        own.electricity(),
        own.annual(),
        cheapest.measure().id(),
        cheapest.measure().name(),
        other.isHere(cheapest.measure(), unit),
        cheapest.first(),
        cheapest.heat(),
        cheapest.electricity(),
        cheapest.annual(),
        saves,
        left,
        overHorizon(figures, left),
        words.of(
            figures,
            "payback",
            "the same air by " + cheapest.measure().name(),
            own.first().value().minus(cheapest.first().value()),
            saves.value(),
            own.measure().lifeYears()));
  }

  /**
   * One of the two.
   *
   * @param first first cost [currency]
   * @param heat energy for the air [kWh/a]
   * @param electricity electricity [kWh/a]
   * @param upkeep upkeep in a year [currency/a]
   * @param annual yearly cost over the horizon [currency/a]
   */
  private record Side(
      Measure measure, Figure first, Figure heat, Figure electricity, Range upkeep, Figure annual) {
    /** First cost and replacements as equal yearly payments at one end [currency/a]. */
    double payments(ToDoubleFunction<Range> end, MoneyFacts money) {
      return new GlobalCost(
              end.applyAsDouble(first.value()),
              measure.lifeYears(),
              money.horizon().likely(),
              money.discountRate().likely())
          .perYear(0);
    }
  }

  private Optional<Side> side(
      Figures figures, String id, Measure measure, Optional<Figure> electricity, Figure heat) {
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
                                figures,
                                id,
                                measure,
                                electricity.orElseGet(() -> usual(figures, id, measure, part)),
                                heat,
                                each.times(part),
                                upkeep.times(part))));
  }

  private Side side(
      Figures figures,
      String id,
      Measure measure,
      Figure electricity,
      Figure heat,
      Range price,
      Range upkeep) {
    Figure first =
        figures.of(
            id + ".first_cost",
            "first cost of " + measure.name(),
            price,
            Unit.MONEY,
            Basis.ASSUMED,
            measure.price().unit() == PriceUnit.PAIR ? "half of the price of a pair" : "price",
            List.of(),
            List.of(measure.price().source()));
    Figure running =
        figures.of(
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
    Figure annual =
        new OverHorizon(money, measure.lifeYears(), first, running)
            .annualCost(new Figures("fan." + id));
    return new Side(
        measure,
        first,
        heat,
        electricity,
        upkeep,
        figures.of(
            id + ".annual_cost",
            "yearly cost over the horizon of " + measure.name(),
            annual.value(),
            Unit.MONEY_PER_YEAR,
            annual.working().formula(),
            List.of(Input.of("CI", first), Input.of("Ca", running)),
            List.of(GLOBAL_COST)));
  }

  /** Of a unit whose power nobody noted, and of a fan that is not there: as is usual. */
  private static Figure usual(Figures figures, String id, Measure measure, double part) {
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

  private Figure heat(Figures figures, FanFlow unit) {
    return figures.of(
        "other.heat_lost",
        "energy for the same air without recovery in a year",
        FanCosts.moved(unit).times(year.perFlow()),
        Unit.KWH_PER_YEAR,
        "q·Q",
        List.of(Input.of("q in", unit.supply()), Input.of("q out", unit.extract())),
        List.of());
  }

  private Figure saves(Figures figures, Figure kept, Side own, Side other) {
    Range power = own.electricity().value().minus(other.electricity().value());
    return figures.of(
        "saves",
        "what it saves in a year of running against the same air by " + other.measure().name(),
        kept.value()
            .times(money.heat().value())
            .minus(product(power, money.electricity().value()))
            .minus(own.upkeep().minus(other.upkeep())),
        Unit.MONEY_PER_YEAR,
        "kept·p_heat − (W − W')·p_el − (u − u')",
        List.of(
            Input.of("kept", kept),
            Input.of("W", own.electricity()),
            Input.of("W'", other.electricity()),
            Input.of("p_heat", money.heat()),
            Input.of("p_el", money.electricity()),
            Input.of("u", "upkeep", own.upkeep(), Unit.MONEY_PER_YEAR, Basis.ASSUMED),
            Input.of(
                "u'", "upkeep of the other", other.upkeep(), Unit.MONEY_PER_YEAR, Basis.ASSUMED)),
        List.of());
  }

  private Figure left(Figures figures, Figure saves, Side own, Side other) {
    Range more =
        new Range(
                own.payments(Range::low, money),
                own.payments(Range::likely, money),
                own.payments(Range::high, money))
            .minus(
                new Range(
                    other.payments(Range::low, money),
                    other.payments(Range::likely, money),
                    other.payments(Range::high, money)));
    return figures.of(
        "left",
        "what is left of that in a year when both are paid for",
        saves.value().minus(more),
        Unit.MONEY_PER_YEAR,
        "saves − (CI·A − CI'·A')",
        List.of(
            Input.of("saves", saves),
            Input.of("CI", own.first()),
            Input.of("CI'", other.first()),
            Input.of("r", money.discountRate()),
            Input.of("τ", money.horizon())),
        List.of(GLOBAL_COST));
  }

  private Figure overHorizon(Figures figures, Figure left) {
    return figures.of(
        "left_over_horizon",
        "the same over the horizon, in money of today",
        left.value()
            .times(
                PresentValue.annuityPresentValueFactor(
                    money.discountRate().likely(), money.horizon().likely())),
        Unit.MONEY,
        "left · f(τ)",
        List.of(
            Input.of("left", left),
            Input.of("r", money.discountRate()),
            Input.of("τ", money.horizon())),
        List.of(GLOBAL_COST));
  }

  /** A range of either sign by one that is above 0. */
  private static Range product(Range any, Range positive) {
    return new Range(
        any.low() * (any.low() < 0 ? positive.high() : positive.low()),
        any.likely() * positive.likely(),
        any.high() * (any.high() < 0 ? positive.low() : positive.high()));
  }
}
