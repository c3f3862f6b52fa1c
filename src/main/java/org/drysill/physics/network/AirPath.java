package org.drysill.physics.network;

import org.drysill.physics.Bounds;
import org.drysill.physics.flow.LeakagePowerLaw;
import org.drysill.physics.flow.Orifice;

/**
 * A crack or gap by which air passes either way, by the power law of leakage (EN ISO 9972) or, with
 * an exponent of 0.5, by the orifice equation (BS 5925).
 *
 * <pre>q = C·Δp·(Δp² + δ²)^((n − 1)/2)          δ = {@value #SMOOTH_PA} Pa</pre>
 *
 * <p>Far above δ this is q = C·|Δp|ⁿ with the sign of Δp. Below it the flow is laminar, in
 * proportion to Δp; the law itself would have an infinite slope at zero, which no gap has.
 *
 * @param coefficient C [m³/(s·Paⁿ)], at least 0
 * @param exponent n, 0.5 to 1
 */
public record AirPath(double coefficient, double exponent) {
  /** The pressure difference δ below which flow is in proportion to it [Pa]. */
  static final double SMOOTH_PA = 1e-3;

  /** Refuses what is no crack. */
  public AirPath {
    Bounds.atLeast("flow coefficient C", coefficient, 0);
    Bounds.inside("flow exponent n", exponent, 0.5, 1);
  }

  /** A share, 0 to 1, of the cracks that follow a law of leakage. */
  public static AirPath of(LeakagePowerLaw law, double share) {
    return new AirPath(law.coefficient() * Bounds.inside("share", share, 0, 1), law.exponent());
  }

  /** An opening with sharp edges, in air of a density [kg/m³]. */
  public static AirPath of(Orifice opening, double densityKgM3) {
    return new AirPath(opening.flowM3S(1, densityKgM3), 0.5);
  }

  /** Flow q [m³/s], of the sign of the pressure difference [Pa]. */
  public double flowM3S(double pressurePa) {
    return coefficient * pressurePa * Math.pow(smoothed(pressurePa), (exponent - 1) / 2);
  }

  /** How the flow changes with the pressure difference, dq/dΔp [m³/(s·Pa)]; never below 0. */
  double slope(double pressurePa) {
    double squared = smoothed(pressurePa);
    return coefficient
        * Math.pow(squared, (exponent - 3) / 2)
        * (exponent * pressurePa * pressurePa + SMOOTH_PA * SMOOTH_PA);
  }

  private static double smoothed(double pressurePa) {
    return pressurePa * pressurePa + SMOOTH_PA * SMOOTH_PA;
  }
}
