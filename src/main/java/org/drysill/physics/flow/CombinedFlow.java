package org.drysill.physics.flow;

import org.drysill.physics.Bounds;

/**
 * Mechanical flows and infiltration together, the quadrature of the ASHRAE Handbook Fundamentals,
 * ventilation and infiltration (memory).
 *
 * <pre>
 * Q = Qb + √(Qu² + Qi²),  Qb = min(Qsu, Qex),  Qu = |Qsu − Qex|
 * </pre>
 *
 * <p>Qsu supply and Qex extract by fans, Qi infiltration without fans, all [m³/s]. Balanced flow
 * adds; unbalanced flow changes the pressure inside and replaces part of the infiltration.
 */
public final class CombinedFlow {
  private CombinedFlow() {}

  /** Total outdoor air Q [m³/s]. */
  public static double totalM3S(double supplyM3S, double extractM3S, double infiltrationM3S) {
    Bounds.atLeast("supply flow [m³/s]", supplyM3S, 0);
    Bounds.atLeast("extract flow [m³/s]", extractM3S, 0);
    Bounds.atLeast("infiltration [m³/s]", infiltrationM3S, 0);
    return Math.min(supplyM3S, extractM3S) + Math.hypot(supplyM3S - extractM3S, infiltrationM3S);
  }
}
