package org.drysill.physics.flow;

import org.drysill.physics.Bounds;

/**
 * Flow through a sharp opening, BS 5925:1991 as amended in 1995, equation (2) (seen).
 *
 * <pre>q = Cd·A·√(2·Δp / ρ)          Δp = (ρ/2)·(q / (Cd·A))²</pre>
 *
 * <p>q flow [m³/s], Δp pressure difference [Pa], ρ density of air [kg/m³].
 *
 * @param discharge Cd, above 0 up to 1; goes with the definition of the area
 * @param areaM2 A, geometric or equivalent area [m²], at least 0
 */
public record Orifice(double discharge, double areaM2) {
  /** Refuses what is no opening. */
  public Orifice {
    Bounds.above("discharge coefficient Cd", discharge, 0);
    Bounds.inside("discharge coefficient Cd", discharge, 0, 1);
    Bounds.atLeast("area [m²]", areaM2, 0);
  }

  /** Flow q [m³/s] at a pressure difference of at least 0. */
  public double flowM3S(double pressurePa, double densityKgM3) {
    Bounds.atLeast("pressure difference [Pa]", pressurePa, 0);
    Bounds.above("density [kg/m³]", densityKgM3, 0);
    return discharge * areaM2 * Math.sqrt(2 * pressurePa / densityKgM3);
  }

  /**
   * Pressure difference Δp [Pa] that drives a flow.
   *
   * @throws IllegalArgumentException for an opening without area
   */
  public double pressurePa(double flowM3S, double densityKgM3) {
    Bounds.atLeast("flow [m³/s]", flowM3S, 0);
    Bounds.above("density [kg/m³]", densityKgM3, 0);
    double velocity = flowM3S / (discharge * Bounds.above("area [m²]", areaM2, 0));
    return densityKgM3 / 2 * velocity * velocity;
  }
}
