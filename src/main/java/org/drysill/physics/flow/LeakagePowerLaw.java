package org.drysill.physics.flow;

import org.drysill.physics.Bounds;

/**
 * Leakage by pressure, EN ISO 9972:2015 and ASTM E779 (memory).
 *
 * <pre>q = C·Δp^n          ELA = q(Δpr)·√(ρ / (2·Δpr))</pre>
 *
 * <p>q flow [m³/s], Δp pressure difference [Pa], C flow coefficient [m³/(s·Paⁿ)], n exponent [1],
 * ELA effective leakage area [m²] at the reference pressure Δpr with a discharge coefficient of 1,
 * ρ density of air [kg/m³].
 *
 * @param coefficient C, at least 0
 * @param exponent n, 0.5 to 1
 */
public record LeakagePowerLaw(double coefficient, double exponent) {
  /** The reference pressure of ASTM E779 [Pa]. */
  public static final double REFERENCE_PA = 4;

  /** Refuses what no crack does. */
  public LeakagePowerLaw {
    Bounds.atLeast("flow coefficient C", coefficient, 0);
    Bounds.inside("flow exponent n", exponent, 0.5, 1);
  }

  /** The law that passes through a flow [m³/s] measured at a pressure [Pa]. */
  public static LeakagePowerLaw through(double flowM3S, double pressurePa, double exponent) {
    Bounds.atLeast("flow [m³/s]", flowM3S, 0);
    Bounds.above("pressure difference [Pa]", pressurePa, 0);
    return new LeakagePowerLaw(flowM3S / Math.pow(pressurePa, exponent), exponent);
  }

  /** Flow q [m³/s] at a pressure difference [Pa] of at least 0. */
  public double flowM3S(double pressurePa) {
    return coefficient
        * Math.pow(Bounds.atLeast("pressure difference [Pa]", pressurePa, 0), exponent);
  }

  /** Effective leakage area ELA [m²] at {@value #REFERENCE_PA} Pa. */
  public double effectiveAreaM2(double densityKgM3) {
    return flowM3S(REFERENCE_PA)
        * Math.sqrt(Bounds.above("density [kg/m³]", densityKgM3, 0) / (2 * REFERENCE_PA));
  }
}
