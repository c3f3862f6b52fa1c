package org.drysill.physics.flow;

import org.drysill.physics.Bounds;

/**
 * Friction factor of a round duct, Colebrook 1939 with the laminar law of Hagen and Poiseuille, as
 * in the ASHRAE Handbook Fundamentals, duct design (memory).
 *
 * <pre>
 * Re &lt; 2300: f = 64 / Re
 * Re ≥ 2300: 1/√f = −2·log10(ε/(3.7·D) + 2.51/(Re·√f))
 * </pre>
 *
 * <p>f friction factor (Darcy) [1], Re Reynolds number [1], ε roughness and D diameter [m]. From
 * 2300 to about 4000 the flow may be either; the turbulent law is taken, which loses more. ε/D up
 * to 0.05, refused above.
 */
public final class Colebrook {
  /** Reynolds number from which the flow is taken for turbulent. */
  public static final double TURBULENT_FROM = 2300;

  /** Each step leaves at most a third of the error of x; so many leave none. */
  private static final int STEPS = 40;

  private Colebrook() {}

  /**
   * Friction factor f. Solved for x = 1/√f by repeated insertion, which contracts for every
   * admitted argument.
   *
   * @param reynolds Re, above 0
   * @param relativeRoughness ε/D, 0 to 0.05
   */
  public static double frictionFactor(double reynolds, double relativeRoughness) {
    Bounds.above("Reynolds number", reynolds, 0);
    Bounds.inside("relative roughness ε/D", relativeRoughness, 0, 0.05);
    return reynolds < TURBULENT_FROM ? 64 / reynolds : turbulent(reynolds, relativeRoughness);
  }

  private static double turbulent(double reynolds, double relativeRoughness) {
    double x = 6;
    for (int i = 0; i < STEPS; i++) {
      x = -2 * Math.log10(relativeRoughness / 3.7 + 2.51 * x / reynolds);
    }
    return 1 / (x * x);
  }
}
