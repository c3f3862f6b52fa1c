package org.drysill.options.money;

import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.assess.MoneyFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/**
 * The energy of a measure in a year and what it costs.
 *
 * @param lost energy for heat that it takes [kWh/a]
 * @param saved energy for heat that it saves [kWh/a]
 * @param electricity electricity [kWh/a]; negative where the fans that go took more
 * @param cost what the three cost together [currency/a]
 * @param heatCost the heat's part of it, likely [currency/a]
 */
record EnergyBill(Figure lost, Figure saved, Figure electricity, Figure cost, double heatCost) {
  private static final Citation HEAT =
      Citation.of("EN ISO 13789", "2017", "0.34 Wh/(m³·K)", How.MEMORY);

  static EnergyBill of(Figures figures, EnergyUse use, MoneyFacts money) {
    Figure lost = energy(figures, "heat_lost", "energy for heat that it takes", use.lost());
    Figure saved = energy(figures, "heat_saved", "energy for heat that it saves", use.saved());
    Figure power = energy(figures, "electricity", "electricity that it uses", use.power());
    Range heat = Signed.product(use.heatLost().minus(use.heatSaved()), money.heat().value());
    Figure cost =
        figures.of(
            "energy_cost",
            "cost of energy in a year",
            heat.plus(Signed.product(use.electricity(), money.electricity().value())),
            Unit.MONEY_PER_YEAR,
            "(heat lost − heat saved)·p_heat + electricity·p_el",
            List.of(
                Input.of("heat lost", lost),
                Input.of("heat saved", saved),
                Input.of("p_heat", money.heat()),
                Input.of("electricity", power),
                Input.of("p_el", money.electricity())),
            List.of());
    return new EnergyBill(lost, saved, power, cost, heat.likely());
  }

  /** The electricity's part of the yearly cost, likely [currency/a]. */
  double powerCost() {
    return cost.likely() - heatCost;
  }

  private static Figure energy(Figures figures, String id, String name, List<EnergyPart> parts) {
    return figures.of(
        id,
        name,
        EnergyPart.sum(parts),
        Unit.KWH_PER_YEAR,
        EnergyPart.formula(parts),
        EnergyPart.inputs(parts),
        parts.isEmpty() ? List.of() : List.of(HEAT));
  }
}
