package org.drysill.assess.home;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.drysill.assess.Figure;
import org.drysill.assess.MoneyFacts;
import org.drysill.assess.Unit;
import org.drysill.reference.prices.FuelFigure;
import org.drysill.reference.prices.MoneyDefaults;
import org.drysill.reference.prices.PriceDefaults;
import org.drysill.reference.prices.SourcedFigure;
import org.drysill.survey.Heating;
import org.drysill.survey.Prices;
import org.drysill.survey.Survey;
import org.drysill.yaml.Quantity;

/** Fills the gaps of prices, heating efficiency, discount rate and horizon. */
final class MoneyGaps {
  private final Optional<Prices> prices;
  private final Optional<Heating> heating;
  private final MoneyDefaults defaults;
  private final List<PriceDefaults> tariffs;
  private final Facts facts;

  MoneyGaps(Survey survey, MoneyDefaults defaults, List<PriceDefaults> tariffs, Facts facts) {
    this.prices = survey.prices();
    this.heating = survey.dwelling().heating();
    this.defaults = defaults;
    this.tariffs = tariffs;
    this.facts = facts;
  }

  MoneyFacts fill() {
    String currency = prices.flatMap(Prices::currency).orElseGet(this::assumedCurrency);
    String fuel = heating.flatMap(Heating::fuel).map(f -> f.word()).orElseGet(this::assumedFuel);
    PriceDefaults tariff = tariff(currency);
    return new MoneyFacts(
        currency,
        price("electricity", Prices::electricity, tariff, "electricity"),
        price("heat", Prices::heat, tariff, fuel),
        efficiency(fuel),
        term(
            "discount_rate",
            "discount rate",
            Prices::discountRate,
            Unit.PERCENT,
            defaults.discountRate()),
        term("horizon", "horizon", Prices::horizon, Unit.YEARS, defaults.horizon()));
  }

  private PriceDefaults tariff(String currency) {
    return tariffs.stream()
        .filter(t -> t.currency().equals(currency))
        .findFirst()
        .orElseGet(
            () ->
                tariffs.stream()
                    .filter(t -> t.currency().equals(defaults.currency()))
                    .findFirst()
                    .orElseThrow());
  }

  private String assumedCurrency() {
    facts.note(
        Facts.assumption(
            "prices.currency",
            "Currency",
            defaults.currency(),
            "The survey names no currency; default prices of measures are in this one.",
            "Give prices.currency.",
            defaults.discountRate().source()));
    return defaults.currency();
  }

  private String assumedFuel() {
    facts.note(
        Facts.assumption(
            "dwelling.heating.fuel",
            "Fuel of the heating",
            defaults.fuel(),
            "The survey names none.",
            "Give dwelling.heating.fuel.",
            defaults.horizon().source()));
    return defaults.fuel();
  }

  private Figure price(
      String what, Function<Prices, Optional<Quantity>> given, PriceDefaults tariff, String fuel) {
    String id = "prices." + what;
    String name = "price of " + (what.equals("heat") ? "heating energy" : what);
    Optional<Quantity> stated = prices.flatMap(given);
    if (stated.isPresent()) {
      return Facts.stated(id, name, stated.get(), Unit.ENERGY_PRICE);
    }
    FuelFigure usual = tariff.energyPrice(fuel).orElseThrow();
    return facts.assumed(
        id,
        name,
        usual.value().range(),
        Unit.ENERGY_PRICE,
        Facts.assumption(
            id,
            "Price of " + fuel,
            usual.value().written() + " " + tariff.currency() + " per kWh",
            tariff.where() + ", from " + tariff.from() + ".",
            "Give the rate of the last bill as prices." + what + ".",
            usual.source()));
  }

  private Figure efficiency(String fuel) {
    Optional<Quantity> stated = heating.flatMap(Heating::efficiency);
    if (stated.isPresent()) {
      return Facts.stated(
          "dwelling.heating.efficiency", "efficiency of heating", stated.get(), Unit.PERCENT);
    }
    FuelFigure usual = defaults.heatingEfficiency(fuel).orElseThrow();
    return facts.assumed(
        "dwelling.heating.efficiency",
        "efficiency of heating",
        usual.value().range(),
        Unit.PERCENT,
        Facts.assumption(
            "dwelling.heating.efficiency",
            "Efficiency of heating with " + fuel,
            usual.value().written() + " as ratio",
            "Usual for this fuel.",
            "Give dwelling.heating.efficiency from the appliance's papers.",
            usual.source()));
  }

  private Figure term(
      String what,
      String name,
      Function<Prices, Optional<Quantity>> given,
      Unit unit,
      SourcedFigure usual) {
    String id = "prices." + what;
    return prices
        .flatMap(given)
        .map(q -> Facts.stated(id, name, q, unit))
        .orElseGet(
            () ->
                facts.assumed(
                    id,
                    name,
                    usual.value().range(),
                    unit,
                    Facts.assumption(
                        id,
                        "For money: " + name,
                        usual.value().written()
                            + (unit == Unit.YEARS ? " years" : " a year, as ratio"),
                        usual.note().orElse("The survey does not say."),
                        "Give " + id + ".",
                        usual.source())));
  }
}
