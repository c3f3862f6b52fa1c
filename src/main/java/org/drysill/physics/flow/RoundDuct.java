package org.drysill.physics.flow;

import org.drysill.physics.Bounds;

/**
 * Pressure loss of a straight round duct (Darcy and Weisbach) and of its fittings; ASHRAE Handbook
 * Fundamentals, duct design (memory).
 *
 * <pre>
 * v = 4·q / (π·D²)     Re = v·D / ν     Δp/L = (f/D)·(ρ/2)·v²     Δp = K·(ρ/2)·v²     Leq = K·D/f
 * </pre>
 *
 * <p>v mean velocity [m/s], q flow [m³/s], ν kinematic viscosity [m²/s], ρ density [kg/m³], f by
 * {@link Colebrook}, K loss coefficient of a fitting [1].
 *
 * @param diameterM D [m]
 * @param roughnessM ε [m], at most 0.05·D
 */
public record RoundDuct(double diameterM, double roughnessM) {
  /** Refuses what is no duct. */
  public RoundDuct {
    Bounds.above("diameter [m]", diameterM, 0);
    Bounds.inside("roughness [m]", roughnessM, 0, 0.05 * diameterM);
  }

  /**
   * Air that flows in ducts.
   *
   * @param densityKgM3 ρ [kg/m³]
   * @param viscosityM2S ν, kinematic viscosity [m²/s]
   */
  public record Air(double densityKgM3, double viscosityM2S) {
    /** Air of 1.2 kg/m³ and 15·10⁻⁶ m²/s, that of a room (memory of handbooks). */
    public static final Air ROOM = new Air(1.2, 1.5e-5);

    /** Refuses what is not above zero. */
    public Air {
      Bounds.above("density [kg/m³]", densityKgM3, 0);
      Bounds.above("kinematic viscosity [m²/s]", viscosityM2S, 0);
    }
  }

  /** Mean velocity v [m/s] of a flow of at least 0. */
  public double velocityMs(double flowM3S) {
    return 4 * Bounds.atLeast("flow [m³/s]", flowM3S, 0) / (Math.PI * diameterM * diameterM);
  }

  /** Reynolds number Re of a flow [m³/s], at least 0. */
  public double reynolds(double flowM3S, Air air) {
    return velocityMs(flowM3S) * diameterM / air.viscosityM2S();
  }

  /** Friction factor f of a flow [m³/s] above 0. */
  public double frictionFactor(double flowM3S, Air air) {
    return Colebrook.frictionFactor(reynolds(flowM3S, air), roughnessM / diameterM);
  }

  /** Friction loss Δp/L [Pa/m]; 0 without flow. */
  public double frictionPaPerM(double flowM3S, Air air) {
    return flowM3S == 0
        ? 0
        : frictionFactor(flowM3S, air) / diameterM * velocityPressurePa(flowM3S, air);
  }

  /** Loss of a fitting Δp = K·(ρ/2)·v² [Pa]. */
  public double fittingPa(double coefficient, double flowM3S, Air air) {
    return Bounds.atLeast("loss coefficient K", coefficient, 0) * velocityPressurePa(flowM3S, air);
  }

  /** Length of straight duct that loses as much as a fitting, Leq = K·D/f [m]. */
  public double equivalentLengthM(double coefficient, double flowM3S, Air air) {
    return Bounds.atLeast("loss coefficient K", coefficient, 0)
        * diameterM
        / frictionFactor(flowM3S, air);
  }

  private double velocityPressurePa(double flowM3S, Air air) {
    double velocity = velocityMs(flowM3S);
    return air.densityKgM3() / 2 * velocity * velocity;
  }
}
