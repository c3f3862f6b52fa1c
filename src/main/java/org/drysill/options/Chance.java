package org.drysill.options;

/**
 * A chance that was counted in samples.
 *
 * @param share the share of samples [1]
 * @param error its standard error by the number of samples, √(p (1 − p)/n) with p kept off 0 and 1
 *     by half a sample [1]
 */
public record Chance(double share, double error) {
  /** Of so many samples in which something holds. */
  public static Chance of(long holds, int samples) {
    double p = (holds + 0.5) / (samples + 1);
    return new Chance((double) holds / samples, Math.sqrt(p * (1 - p) / samples));
  }
}
