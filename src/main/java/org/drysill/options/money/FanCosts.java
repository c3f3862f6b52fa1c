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
import org.drysill.assess.recovery.RecoveryUnit;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.options.FanRunningCost;
import org.drysill.options.OptionsBasis;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;
import org.drysill.physics.energy.FanEnergy;
import org.drysill.reference.measures.AirEffect;
import org.drysill.reference.measures.Measure;

/** What the fans that are there cost to run; heat recovery as measured, else as declared. */
public final class FanCosts {
  private static final double HOURS_PER_YEAR = 8760;

  private final Assessment assessment;
  private final Recovered recovered;
  private final HeatYear year;
  private final List<Measure> measures;
  private final RecoveryWorths worths;

  /** For an assessment and what is published. */
  public FanCosts(Assessment assessment, OptionsBasis basis) {
    this.assessment = assessment;
    this.recovered = new Recovered(assessment, basis);
    this.measures = basis.catalogue().measures();
    this.year = new HeatYear(assessment.home(), basis.defaults().gains().range());
    this.worths = new RecoveryWorths(assessment, basis, year);
  }

  /** One entry for each fan, in the order of the survey. */
  public List<FanRunningCost> all() {
    return assessment.ventilation().provided().fans().stream().map(this::of).toList();
  }

  private FanRunningCost of(FanFlow fan) {
    Figures figures = new Figures("fan." + fan.fan().id());
    Optional<Figure> power = fan.fan().power().map(p -> electricity(figures, fan, p.range()));
    Range moved = moved(fan);
    Range share = recovered.by(fan);
    Optional<Figure> lost =
        moved.high() > 0 ? Optional.of(lost(figures, fan, share)) : Optional.empty();
    Optional<Figure> kept =
        share.high() > 0 && moved.high() > 0
            ? Optional.of(kept(figures, fan, share))
            : Optional.empty();
    Optional<Net> net = kept.flatMap(k -> power.map(p -> new Net(figures, k, p)));
    return new FanRunningCost(
        fan.fan().id(),
        power,
        lost,
        kept,
        net.map(Net::energy),
        net.map(n -> n.money(assessment.home().money())),
        kept.flatMap(k -> like(fan).map(Measure::id)),
        kept.flatMap(
            k -> lost.flatMap(l -> like(fan).flatMap(m -> worths.of(fan, m, k, l, power)))),
        cost(figures, power, lost));
  }

  /** The measure that brings such a unit. */
  private Optional<Measure> like(FanFlow fan) {
    return measures.stream()
        .filter(
            m ->
                m.air().flatMap(AirEffect::fan).filter(fan.fan().kind().word()::equals).isPresent())
        .findFirst();
  }

  /**
   * What recovery is worth after its fan is paid.
   *
   * @param kept energy kept [kWh/a]
   * @param power electricity [kWh/a]
   */
  private record Net(Figures figures, Figure kept, Figure power) {
    private static final String WHAT = "what its heat recovery saves less its electricity";

    Figure energy() {
      return figures.of(
          "net_kept",
          WHAT + ", in a year",
          kept.value().minus(power.value()),
          Unit.KWH_PER_YEAR,
          "kept − electricity",
          List.of(Input.of("kept", kept), Input.of("electricity", power)),
          List.of());
    }

    Figure money(MoneyFacts prices) {
      return figures.of(
          "net_saved",
          WHAT + ", in money a year",
          kept.value()
              .times(prices.heat().value())
              .minus(power.value().times(prices.electricity().value())),
          Unit.MONEY_PER_YEAR,
          "kept·p_heat − electricity·p_el",
          List.of(
              Input.of("kept", kept),
              Input.of("electricity", power),
              Input.of("p_heat", prices.heat()),
              Input.of("p_el", prices.electricity())),
          List.of());
    }
  }

  private static Figure electricity(Figures figures, FanFlow fan, Range power) {
    return figures.of(
        "electricity",
        "electricity of the " + fan.name() + " in a year",
        power.times(fan.shareOfDay().value()).times(FanEnergy.electricityKwh(1, HOURS_PER_YEAR)),
        Unit.KWH_PER_YEAR,
        "P·share of the day·8760 h",
        List.of(
            Input.of("P", "power", power, Unit.WATT, Basis.DECLARED),
            Input.of("share", fan.shareOfDay())),
        List.of());
  }

  private Figure lost(Figures figures, FanFlow fan, Range share) {
    boolean exchanger = share.high() > 0;
    return figures.of(
        "heat_lost",
        "energy for the air of the " + fan.name() + " in a year",
        moved(fan).times(left(share)).times(year.perFlow()),
        Unit.KWH_PER_YEAR,
        exchanger ? "(1 − r)·" + HeatYear.OF_A_FLOW : HeatYear.OF_A_FLOW,
        exchanger
            ? year.inputs(ratio(fan, share), Input.of("q", moving(fan)))
            : year.inputs(Input.of("q", moving(fan))),
        List.of());
  }

  private Figure kept(Figures figures, FanFlow fan, Range share) {
    return figures.of(
        "heat_recovered",
        "energy kept by the " + fan.name() + " in a year",
        moved(fan).times(share).times(year.perFlow()),
        Unit.KWH_PER_YEAR,
        "r·" + HeatYear.OF_A_FLOW,
        year.inputs(ratio(fan, share), Input.of("q", moving(fan))),
        List.of());
  }

  /** The part of its heat that the air of a unit keeps: as measured, else as is usual. */
  private Input ratio(FanFlow fan, Range share) {
    return assessment
        .recovery()
        .unit(fan.fan().id())
        .flatMap(RecoveryUnit::measured)
        .map(measured -> Input.of("r", measured))
        .orElseGet(
            () ->
                Input.of(
                    "r",
                    "declared heat recovery, taken down for use",
                    share,
                    Unit.PERCENT,
                    Basis.ASSUMED));
  }

  private Optional<Figure> cost(Figures figures, Optional<Figure> power, Optional<Figure> lost) {
    MoneyFacts money = assessment.home().money();
    if (power.isEmpty() && lost.isEmpty()) {
      return Optional.empty();
    }
    List<Input> inputs = new ArrayList<>();
    power.ifPresent(p -> inputs.add(Input.of("electricity", p)));
    lost.ifPresent(l -> inputs.add(Input.of("heat", l)));
    inputs.add(Input.of("p_el", money.electricity()));
    inputs.add(Input.of("p_heat", money.heat()));
    Range zero = Range.exactly(0);
    Range cost =
        power
            .map(Figure::value)
            .orElse(zero)
            .times(money.electricity().value())
            .plus(lost.map(Figure::value).orElse(zero).times(money.heat().value()));
    return Optional.of(
        figures.of(
            "cost",
            "running cost in a year",
            cost,
            Unit.MONEY_PER_YEAR,
            "electricity·p_el + heat·p_heat",
            inputs,
            List.of()));
  }

  private static Range left(Range share) {
    return new Range(1 - share.high(), 1 - share.likely(), 1 - share.low());
  }

  /** What a fan exchanges or takes out, averaged over time [m³/s]. */
  static Range moved(FanFlow fan) {
    return moving(fan).value();
  }

  /** The greater of what it blows in and what it takes out [m³/s]. */
  static Figure moving(FanFlow fan) {
    return fan.supply().likely() >= fan.extract().likely() ? fan.supply() : fan.extract();
  }
}
