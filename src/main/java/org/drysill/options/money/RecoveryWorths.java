package org.drysill.options.money;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.MoneyFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.assess.recovery.RecoveryUnit;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.options.OptionsBasis;
import org.drysill.options.RecoveryWorth;
import org.drysill.options.effect.Figures;
import org.drysill.reference.measures.Measure;

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
 * neither difference, so its doubt does not widen it.
 */
final class RecoveryWorths {
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
    AirSides sides = new AirSides(money, prices, figures);
    return sides
        .of("unit", like, electricity, lost)
        .flatMap(
            own ->
                other.of(unit).stream()
                    .flatMap(m -> sides.of("other", m, Optional.empty(), heat).stream())
                    .min(
                        Comparator.comparingDouble((AirSide s) -> s.annual().likely())
                            .thenComparing(s -> s.measure().id()))
                    .map(cheapest -> compared(figures, unit, kept, own, cheapest)));
  }

  private RecoveryWorth compared(
      Figures figures, FanFlow unit, Figure kept, AirSide own, AirSide cheapest) {
    WorthFigures worth = new WorthFigures(money, figures);
    Figure saves = worth.saves(kept, own, cheapest);
    Figure left = worth.left(saves, own, cheapest);
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
        worth.overHorizon(left),
        words.of(
            figures,
            "payback",
            "the same air by " + cheapest.measure().name(),
            own.first().value().minus(cheapest.first().value()),
            saves.value(),
            own.measure().lifeYears()));
  }

  private Figure heat(Figures figures, FanFlow unit) {
    return figures.of(
        "other.heat_lost",
        "energy for the same air without recovery in a year",
        FanCosts.moved(unit).times(year.perFlow()),
        Unit.KWH_PER_YEAR,
        HeatYear.OF_A_FLOW,
        year.inputs(Input.of("q", FanCosts.moving(unit))),
        List.of());
  }
}
