package org.drysill.physics.energy;

import org.drysill.physics.Bounds;

/**
 * Heat that warms outdoor air, EN ISO 13789:2017 (memory).
 *
 * <pre>H = ρcp·q          Q = H·DD·24 / 1000</pre>
 *
 * <p>H heat loss coefficient [W/K], ρcp volumetric heat capacity of air [J/(m³·K)], q flow [m³/s],
 * DD {@link DegreeDays} [K·d], Q heat [kWh].
 */
public final class VentilationHeat {
  /** Usual volumetric heat capacity of air, 0.34 Wh/(m³·K) [J/(m³·K)]; EN ISO 13789 (memory). */
  public static final double USUAL_CAPACITY_J_M3K = 1224;

  private VentilationHeat() {}

  /** Heat loss coefficient H = ρcp·q [W/K]. */
  public static double lossCoefficientWK(double flowM3S, double capacityJM3K) {
    return Bounds.atLeast("flow [m³/s]", flowM3S, 0)
        * Bounds.above("heat capacity of air [J/(m³·K)]", capacityJM3K, 0);
  }

  /** Heat Q = H·DD·24/1000 [kWh] from degree-days [K·d]. */
  public static double heatKwh(double lossWK, double degreeDays) {
    return Bounds.atLeast("heat loss coefficient [W/K]", lossWK, 0)
        * Bounds.atLeast("degree-days [K·d]", degreeDays, 0)
        * 24
        / 1000;
  }
}
