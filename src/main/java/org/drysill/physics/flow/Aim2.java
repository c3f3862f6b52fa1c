package org.drysill.physics.flow;

import org.drysill.physics.Bounds;

/**
 * Infiltration by the Alberta model AIM-2, Walker and Wilson, printed as "enhanced model" in the
 * ASHRAE Handbook Fundamentals, residential infiltration (memory).
 *
 * <pre>
 * Qs = c·Cs·|ΔT|^n          Qw = c·Cw·(s·G·U)^(2n)          Q = √(Qs² + Qw²)
 * </pre>
 *
 * <p>Q [m³/s]; c, n coefficient [m³/(s·Paⁿ)] and exponent of the leakage; ΔT indoor less outdoor
 * temperature [K]; U wind speed at the weather station [m/s].
 *
 * @param stack Cs [(Pa/K)ⁿ]
 * @param wind Cw [(Pa·s²/m²)ⁿ]
 * @param shelter s [1]
 * @param windMultiplier G [1]
 */
public record Aim2(double stack, double wind, double shelter, double windMultiplier) {
  /** Refuses negative coefficients. */
  public Aim2 {
    Bounds.atLeast("stack coefficient Cs", stack, 0);
    Bounds.atLeast("wind coefficient Cw", wind, 0);
    Bounds.atLeast("shelter factor s", shelter, 0);
    Bounds.atLeast("wind speed multiplier G", windMultiplier, 0);
  }

  /** Stack part Qs [m³/s]. */
  public double stackM3S(LeakagePowerLaw leakage, double differenceK) {
    Bounds.finite("temperature difference [K]", differenceK);
    return stack * leakage.flowM3S(Math.abs(differenceK));
  }

  /** Wind part Qw [m³/s]. */
  public double windM3S(LeakagePowerLaw leakage, double windMs) {
    double local = shelter * windMultiplier * Bounds.atLeast("wind speed [m/s]", windMs, 0);
    return wind * leakage.flowM3S(local * local);
  }

  /** Infiltration Q [m³/s]. */
  public double flowM3S(LeakagePowerLaw leakage, double differenceK, double windMs) {
    return Math.hypot(stackM3S(leakage, differenceK), windM3S(leakage, windMs));
  }
}
