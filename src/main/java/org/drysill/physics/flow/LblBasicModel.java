package org.drysill.physics.flow;

import org.drysill.physics.Bounds;

/**
 * Infiltration by stack and wind, the simplified model of Sherman and Grimsrud (1980) as printed as
 * "basic model" in the ASHRAE Handbook Fundamentals, residential infiltration (memory).
 *
 * <pre>Q = (AL / 1000) · √(Cs·|ΔT| + Cw·U²)</pre>
 *
 * <p>Q infiltration [m³/s]; AL effective leakage area at 4 Pa [cm²], given here in m²; ΔT indoor
 * less outdoor temperature [K]; U wind speed at the weather station [m/s].
 *
 * @param stack Cs [(l/s)²/(cm⁴·K)], by storeys
 * @param wind Cw [(l/s)²/(cm⁴·(m/s)²)], by storeys and shelter
 */
public record LblBasicModel(double stack, double wind) {
  private static final double CM2_PER_M2 = 1e4;

  /** Refuses negative coefficients. */
  public LblBasicModel {
    Bounds.atLeast("stack coefficient Cs", stack, 0);
    Bounds.atLeast("wind coefficient Cw", wind, 0);
  }

  /** Infiltration Q [m³/s]. */
  public double flowM3S(double leakageAreaM2, double differenceK, double windMs) {
    Bounds.atLeast("leakage area [m²]", leakageAreaM2, 0);
    Bounds.finite("temperature difference [K]", differenceK);
    Bounds.atLeast("wind speed [m/s]", windMs, 0);
    double squared = stack * Math.abs(differenceK) + wind * windMs * windMs;
    return leakageAreaM2 * CM2_PER_M2 / 1000 * Math.sqrt(squared);
  }
}
