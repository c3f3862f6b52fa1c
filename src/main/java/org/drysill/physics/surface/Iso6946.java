package org.drysill.physics.surface;

import java.util.List;
import org.drysill.physics.Bounds;

/**
 * Thermal transmittance of plane homogeneous layers, ISO 6946:2017, clause 6 (memory).
 *
 * <pre>R = d / λ          U = 1 / (Rsi + ΣR + Rse)</pre>
 *
 * <p>d thickness [m], λ conductivity [W/(m·K)], R resistance [m²·K/W], U [W/(m²·K)]. Studs, fixings
 * and air gaps need the combined method of the standard, which this is not.
 */
public final class Iso6946 {
  private Iso6946() {}

  /** Resistance R = d / λ [m²·K/W] of a layer. */
  public static double layerResistance(double thicknessM, double conductivity) {
    return Bounds.atLeast("thickness [m]", thicknessM, 0)
        / Bounds.above("conductivity [W/(m·K)]", conductivity, 0);
  }

  /**
   * Thermal transmittance U [W/(m²·K)].
   *
   * @param rsi internal surface resistance [m²·K/W]
   * @param layers resistances of the layers [m²·K/W]
   * @param rse external surface resistance [m²·K/W]
   */
  public static double uValue(double rsi, List<Double> layers, double rse) {
    double total =
        Bounds.atLeast("internal surface resistance [m²·K/W]", rsi, 0)
            + Bounds.atLeast("external surface resistance [m²·K/W]", rse, 0);
    for (double layer : layers) {
      total += Bounds.atLeast("resistance of a layer [m²·K/W]", layer, 0);
    }
    return 1 / Bounds.above("total resistance [m²·K/W]", total, 0);
  }
}
