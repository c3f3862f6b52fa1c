package org.drysill.physics.zones.fit;

import org.drysill.physics.Bounds;

/**
 * A fit that does not bend to a reading that it cannot explain: while the reading that misses most
 * misses by more than a limit, it is left out and the rest fitted again. At most half of the
 * readings, rounded down, are left out; a model that explains fewer is not saved by leaving out
 * more.
 */
public final class RobustFit {
  private final Posterior posterior;
  private final double[] misses;
  private final boolean[] leftOut;

  private RobustFit(Posterior posterior, double[] misses, boolean[] leftOut) {
    this.posterior = posterior;
    this.misses = misses;
    this.leftOut = leftOut;
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
    double[] used = errors.clone();
    boolean[] leftOut = new boolean[readings.length];
    Posterior posterior = new LeastSquares(model, readings, used).solve(unknowns);
    for (int left = 0; left < readings.length / 2; left++) {
      int worst = worst(posterior, readings.length);
      if (Math.abs(posterior.studentised(worst)) <= limit) {
        break;
      }
      leftOut[worst] = true;
      used[worst] = Double.POSITIVE_INFINITY;
      posterior = new LeastSquares(model, readings, used).solve(unknowns);
    }
    return new RobustFit(posterior, misses(model, readings, errors, posterior, leftOut), leftOut);
  }

  /** What is believed after the readings that were kept. */
  public Posterior posterior() {
    return posterior;
  }

  /** True where a reading was left out. */
  public boolean leftOut(int reading) {
    return leftOut[reading];
  }

  /**
   * By how much the model misses a reading, above 0 where the reading is higher, in standard
   * deviations; for one that was left out of its prediction from the others.
   */
  public double miss(int reading) {
    return misses[reading];
  }

  private static int worst(Posterior posterior, int readings) {
    int worst = 0;
    for (int i = 1; i < readings; i++) {
      if (Math.abs(posterior.studentised(i)) > Math.abs(posterior.studentised(worst))) {
        worst = i;
      }
    }
    return worst;
  }

  private static double[] misses(
      Forward model, double[] readings, double[] errors, Posterior posterior, boolean[] leftOut) {
    double[] misses = new double[readings.length];
    for (int i = 0; i < misses.length; i++) {
      int reading = i;
      misses[i] =
          leftOut[i]
              ? (readings[i] - posterior.value(z -> model.at(z)[reading]))
                  / Math.hypot(errors[i], posterior.deviation(z -> model.at(z)[reading]))
              : posterior.studentised(i);
    }
    return misses;
  }
}
