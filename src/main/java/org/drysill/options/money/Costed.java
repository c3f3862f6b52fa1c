package org.drysill.options.money;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.options.CostParts;
import org.drysill.options.MeasureMoney;
import org.drysill.options.effect.Studied;

/**
 * A candidate with its effect and its money.
 *
 * @param studied the candidate and its effect
 * @param money its money
 * @param heatCost the part of its yearly cost that heat makes, likely [currency/a]; negative where
 *     it saves
 * @param parts the parts of its global cost; empty where no price is known
 */
public record Costed(
    Studied studied, MeasureMoney money, double heatCost, Optional<CostParts> parts) {
  /** Yearly cost over the horizon; empty where no price is known. */
  public Optional<Double> annualCost() {
    return money.annualCost().map(Figure::likely);
  }

  /** First cost; empty where no price is known. */
  public Optional<Double> firstCost() {
    return money.firstCost().map(Figure::likely);
  }

  /** Yearly cost of energy and upkeep, likely; 0 where none is known. */
  double runningCost() {
    return money.runningCost().map(Figure::likely).orElse(0.0);
  }
}
