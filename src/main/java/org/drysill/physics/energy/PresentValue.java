package org.drysill.physics.energy;

import org.drysill.physics.Bounds;

/**
 * Money in time, EN 15459-1:2017 (memory); the factors are those of every table of discounting.
 *
 * <pre>
 * Rr = (R − Ri) / (1 + Ri)          d(n) = (1 + r)^−n
 * f(n) = (1 − (1 + r)^−n) / r       a(n) = 1 / f(n)
 * f*(n) = (1 + e)/(r − e)·(1 − ((1 + e)/(1 + r))^n)
 * </pre>
 *
 * <p>R market and Ri inflation rate, r real rate and e real growth of a price, all per year as
 * ratio above −1; n years, at least 0. f is n where r is 0, f* is n where e equals r.
 */
public final class PresentValue {
  private PresentValue() {}

  /** Real rate Rr [1/a] from the market rate and inflation [1/a], each above −1 and at most 1. */
  public static double realRate(double marketRate, double inflation) {
    return (rate(marketRate) - rate(inflation)) / (1 + inflation);
  }

  /** Discount factor d(n) [-]: what a sum after n years, 0 to 200, is worth today. */
  public static double discountFactor(double rate, double years) {
    return Math.pow(1 + rate(rate), -years(years));
  }

  /**
   * Present value factor f(n) [a]: what a sum paid at the end of each of n years is worth today.
   */
  public static double annuityPresentValueFactor(double rate, double years) {
    return growing(rate(rate), 0, years(years));
  }

  /** Present value factor f*(n) [a] of a yearly sum whose price grows by e [1/a]. */
  public static double growingPresentValueFactor(double rate, double growth, double years) {
    return growing(rate(rate), rate(growth), years(years));
  }

  /** Annuity factor a(n) = 1/f(n) [1/a]: the yearly sum that repays 1 in n years, n above 0. */
  public static double annuityFactor(double rate, double years) {
    return 1 / annuityPresentValueFactor(rate, Bounds.above("years", years, 0));
  }

  private static double growing(double rate, double growth, double years) {
    // With x = ln((1 + e)/(1 + r)) the factor is (1 + e)/(r − e) · (1 − exp(n·x)). log1p and expm1
    // keep it exact for rates close to each other.
    double apart = growth - rate;
    double x = Math.log1p(apart / (1 + rate));
    return apart == 0 ? years : Math.expm1(years * x) * (1 + growth) / apart;
  }

  private static double rate(double rate) {
    Bounds.above("yearly rate", rate, -1);
    return Bounds.inside("yearly rate", rate, -1, 1);
  }

  private static double years(double years) {
    return Bounds.inside("years", years, 0, 200);
  }
}
