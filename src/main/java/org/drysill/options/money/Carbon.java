package org.drysill.options.money;

import java.util.List;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.options.OptionsBasis;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;
import org.drysill.reference.prices.FuelFigure;
import org.drysill.reference.prices.PriceDefaults;
import org.drysill.survey.Heating;

/** Carbon dioxide of the energy that a measure takes and saves. */
final class Carbon {
  private final FuelFigure heat;
  private final FuelFigure electricity;

  Carbon(Home home, OptionsBasis basis) {
    PriceDefaults factors =
        basis
            .prices(home.money().currency())
            .or(() -> basis.prices(basis.money().currency()))
            .orElseThrow();
    String fuel =
        home.survey()
            .dwelling()
            .heating()
            .flatMap(Heating::fuel)
            .map(f -> f.word())
            .orElse(basis.money().fuel());
    this.heat = factors.carbonDioxide(fuel).orElseThrow();
    this.electricity = factors.carbonDioxide("electricity").orElseThrow();
  }

  /** Of a kilowatt-hour of heat, likely [kg]. */
  double heatKgPerKwh() {
    return heat.value().range().likely();
  }

  Figure of(Figures figures, EnergyUse use, EnergyBill bill) {
    Range value =
        Signed.product(use.heatLost().minus(use.heatSaved()), heat.value().range())
            .plus(Signed.product(use.electricity(), electricity.value().range()));
    return figures.of(
        "co2",
        "carbon dioxide of its energy in a year",
        value,
        Unit.KG_CO2_PER_YEAR,
        "(heat lost − heat saved)·k_heat + electricity·k_el",
        List.of(
            Input.of("heat lost", bill.lost()),
            Input.of("heat saved", bill.saved()),
            Input.of("electricity", bill.electricity()),
            factor("k_heat", "kg of CO₂ for each kWh of heat", heat),
            factor("k_el", "kg of CO₂ for each kWh of electricity", electricity)),
        List.of(heat.source(), electricity.source()));
  }

  private static Input factor(String symbol, String name, FuelFigure figure) {
    return Input.of(symbol, name, figure.value().range(), Unit.COUNT, Basis.PUBLISHED);
  }
}
