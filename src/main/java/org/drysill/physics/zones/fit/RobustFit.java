package org.drysill.physics.zones.fit;

import org.drysill.physics.Bounds;

/**
 * A fit that does not bend to a reading that the others contradict. Each reading is held against
 * what a fit to the others makes expect there, by the error of both; while the one that misses most
 * misses by more than a limit, it is left out and the rest judged again. At most half of the
 * readings, rounded down, are left out; a model that explains fewer is not saved by leaving out
 * more.
 */
public final class RobustFit {
  private final Forward model;
  private final double[] readings;
  private final double[] errors;
  private final double[] used;
  private final double[] misses;
  private Posterior posterior;

  private RobustFit(Forward model, double[] readings, double[] errors, int unknowns) {
    this.model = model;
    this.readings = readings.clone();
    this.errors = errors.clone();
    this.used = errors.clone();
    this.misses = new double[readings.length];
    this.posterior = solve(used, new double[unknowns]);
  }

  /**
   * Fits.
   *
   * @param model the model
   * @param readings what was read
   * @param errors standard error of each reading, above 0
   * @param unknowns how many there are
   * @param limit the miss beyond which a reading is left out, in standard deviations, above 0
   */
  public static RobustFit of(
      Forward model, double[] readings, double[] errors, int unknowns, double limit) {
    Bounds.above("limit of a miss", limit, 0);
    RobustFit fit = new RobustFit(model, readings, errors, unknowns);
    fit.judge();
    int worst = fit.worst();
    for (int left = 0; left < readings.length / 2 && fit.isBeyond(worst, limit); left++) {
      fit.leaveOut(worst);
      worst = fit.worst();
    }
    return fit;
  }

  /** What is believed after the readings that were kept. */
  public Posterior posterior() {
    return posterior;
  }

  /** True where a reading was left out. */
  public boolean leftOut(int reading) {
    return Double.isInfinite(used[reading]);
  }

  /**
   * By how much a reading differs from what the other readings make expect, in standard deviations
   * of that difference; above 0 where it is higher.
   */
  public double miss(int reading) {
    return misses[reading];
  }

  private boolean isBeyond(int reading, double limit) {
    return Math.abs(misses[reading]) > limit;
  }

  private void leaveOut(int reading) {
    used[reading] = Double.POSITIVE_INFINITY;
    posterior = solve(used, posterior.means());
    judge();
  }

  private void judge() {
    for (int i = 0; i < misses.length; i++) {
      int reading = i;
      double[] others = used.clone();
      others[i] = Double.POSITIVE_INFINITY;
      Posterior expected = leftOut(i) ? posterior : solve(others, posterior.means());
      misses[i] =
          (readings[i] - expected.value(z -> model.at(z)[reading]))
              / Math.hypot(errors[i], expected.deviation(z -> model.at(z)[reading]));
    }
  }

  /** The reading that misses most among those that are kept. */
  private int worst() {
    int worst = 0;
    for (int i = 1; i < misses.length; i++) {
      boolean more = Math.abs(misses[i]) > Math.abs(misses[worst]);
      worst = leftOut(worst) || (!leftOut(i) && more) ? i : worst;
    }
    return worst;
  }

  private Posterior solve(double[] withErrors, double[] start) {
    return new LeastSquares(model, readings, withErrors).solve(start);
  }
}
