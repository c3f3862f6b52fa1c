package org.drysill.physics.energy;

import org.drysill.physics.Bounds;

/**
 * Global cost of a measure, EN 15459-1:2017 and Delegated Regulation (EU) No 244/2012, Annex I
 * (form of the sum seen, details memory).
 *
 * <pre>
 * Cg = CI·(1 + Σk d(k·life)) + Ca·f(τ) − V·d(τ),   k·life &lt; τ
 * V = CI·(remaining life of the last purchase) / life
 * </pre>
 *
 * <p>CI first cost, bought again whenever its life ends within the horizon τ; Ca yearly cost; V
 * final value on a straight line; d and f of {@link PresentValue}. All in one currency at today's
 * prices.
 *
 * @param firstCost CI
 * @param lifeYears life of the measure [a]
 * @param horizonYears τ [a]
 * @param rate real discount rate per year
 */
public record GlobalCost(double firstCost, double lifeYears, double horizonYears, double rate) {
  /** Refuses costs below zero, lives and horizons that are not above zero. */
  public GlobalCost {
    Bounds.atLeast("first cost", firstCost, 0);
    Bounds.inside("life [a]", lifeYears, 0.1, 200);
    Bounds.above("horizon [a]", horizonYears, 0);
    PresentValue.discountFactor(rate, horizonYears);
  }

  /** What the purchases of the horizon are worth today, the first and every replacement [money]. */
  public double purchases() {
    double factor = 1;
    for (int k = 1; k <= replacements(); k++) {
      factor += PresentValue.discountFactor(rate, k * lifeYears);
    }
    return firstCost * factor;
  }

  /** How often the measure is bought again: at each end of life before the horizon's own end. */
  public int replacements() {
    return (int) Math.ceil(horizonYears / lifeYears) - 1;
  }

  /** Final value V at the end of the horizon, in money of then [money]. */
  public double finalValue() {
    double lived = horizonYears - replacements() * lifeYears;
    return firstCost * (lifeYears - lived) / lifeYears;
  }

  /** Global cost Cg [money] with a yearly cost [money/a] of either sign; a saving is negative. */
  public double total(double yearlyCost) {
    return purchases()
        + Bounds.finite("yearly cost", yearlyCost)
            * PresentValue.annuityPresentValueFactor(rate, horizonYears)
        - finalValue() * PresentValue.discountFactor(rate, horizonYears);
  }

  /** The same as an equal yearly sum over the horizon: Cg·a(τ) [money/a]. */
  public double perYear(double yearlyCost) {
    return total(yearlyCost) * PresentValue.annuityFactor(rate, horizonYears);
  }
}
