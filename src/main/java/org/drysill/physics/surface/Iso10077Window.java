package org.drysill.physics.surface;

import org.drysill.physics.Bounds;

/**
 * Thermal transmittance of a window, ISO 10077-1:2017, clause 6 (memory).
 *
 * <pre>Uw = (Ag·Ug + Af·Uf + lg·ψg) / (Ag + Af)</pre>
 *
 * @param glassM2 Ag, visible area of the glass [m²]
 * @param glassU Ug [W/(m²·K)]
 * @param frameM2 Af, area of the frame [m²]
 * @param frameU Uf [W/(m²·K)]
 * @param edgeM lg, visible perimeter of the glass [m]
 * @param edgePsi ψg, linear transmittance of the edge [W/(m·K)]
 */
public record Iso10077Window(
    double glassM2, double glassU, double frameM2, double frameU, double edgeM, double edgePsi) {
  /** Refuses negative measures and a window without any area. */
  public Iso10077Window {
    Bounds.atLeast("area of the glass [m²]", glassM2, 0);
    Bounds.atLeast("U-value of the glass [W/(m²·K)]", glassU, 0);
    Bounds.atLeast("area of the frame [m²]", frameM2, 0);
    Bounds.atLeast("U-value of the frame [W/(m²·K)]", frameU, 0);
    Bounds.atLeast("length of the edge [m]", edgeM, 0);
    Bounds.atLeast("linear transmittance of the edge [W/(m·K)]", edgePsi, 0);
    Bounds.above("area of the window [m²]", glassM2 + frameM2, 0);
  }

  /** Thermal transmittance Uw of the whole window [W/(m²·K)]. */
  public double uValue() {
    return (glassM2 * glassU + frameM2 * frameU + edgeM * edgePsi) / (glassM2 + frameM2);
  }
}
