package org.drysill.physics.flow;

import org.drysill.physics.Bounds;

/**
 * Annual mean infiltration as a fraction of the leakage at 50 Pa.
 *
 * <pre>
 * n = n50 / N          q = q50 · A / (3600 · N)          n50 = q50 · A / V
 * N = 20               Kronvall 1978, Persily 1983
 * N = C·H·S·L          Sherman 1987, Energy and Buildings 10, 81-86
 * </pre>
 *
 * <p>n, n50 air changes [1/h]; q infiltration [m³/s]; q50 air permeability [m³/(h·m²)]; A envelope
 * area [m²]; V volume [m³]. All from memory. One annual mean for an ordinary house; in a British
 * house with tracer gas tests such methods were called inaccurate by those who compared them.
 */
public final class LeakageDivisor {
  /** The divisor of the rule of thumb. */
  public static final double KRONVALL_PERSILY = 20;

  private LeakageDivisor() {}

  /**
   * Sherman's divisor N = C·H·S·L from the published factors, all ratios.
   *
   * @return N, by which n50 [1/h] is divided to give the infiltration of a year [1/h]
   */
  public static double sherman(double climate, double height, double shelter, double leakType) {
    return Bounds.above("climate factor C", climate, 0)
        * Bounds.above("height factor H", height, 0)
        * Bounds.above("shelter factor S", shelter, 0)
        * Bounds.above("leak type factor L", leakType, 0);
  }

  /** Infiltration n = n50 / N [1/h]. */
  public static double airChangePerHour(double n50, double divisor) {
    return Bounds.atLeast("air change at 50 Pa [1/h]", n50, 0)
        / Bounds.above("divisor", divisor, 0);
  }

  /** Infiltration q = q50·A / (3600·N) [m³/s] from an air permeability. */
  public static double flowM3S(double permeability50, double envelopeM2, double divisor) {
    return leakage50M3H(permeability50, envelopeM2) / 3600 / Bounds.above("divisor", divisor, 0);
  }

  /** Air change at 50 Pa n50 = q50·A / V [1/h]; EN ISO 9972:2015. */
  public static double n50(double permeability50, double envelopeM2, double volumeM3) {
    return leakage50M3H(permeability50, envelopeM2) / Bounds.above("volume [m³]", volumeM3, 0);
  }

  private static double leakage50M3H(double permeability50, double envelopeM2) {
    return Bounds.atLeast("air permeability at 50 Pa [m³/(h·m²)]", permeability50, 0)
        * Bounds.above("envelope area [m²]", envelopeM2, 0);
  }
}
