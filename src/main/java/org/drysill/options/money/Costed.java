package org.drysill.options.money;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.options.MeasureMoney;
import org.drysill.options.effect.Studied;

/**
 * A candidate with its effect and its money.
 *
 * @param studied the candidate and its effect
 * @param money its money, not yet compared with others
 */
public record Costed(Studied studied, MeasureMoney money) {
  /** Yearly cost over the horizon; empty where no price is known. */
  public Optional<Double> annualCost() {
    return money.annualCost().map(Figure::likely);
  }

  /** First cost; empty where no price is known. */
  public Optional<Double> firstCost() {
    return money.firstCost().map(Figure::likely);
  }
}
