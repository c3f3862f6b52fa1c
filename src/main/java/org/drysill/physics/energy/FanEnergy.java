package org.drysill.physics.energy;

import org.drysill.physics.Bounds;

/**
 * Electricity of fans.
 *
 * <pre>SFP = P / q          W = P·t / 1000</pre>
 *
 * <p>SFP specific fan power [W/(m³/s)] (1 W per l/s is 1000), P electric power [W], q flow [m³/s],
 * W electricity [kWh], t hours. EN 16798-3 (memory).
 */
public final class FanEnergy {
  private FanEnergy() {}

  /** Specific fan power SFP [W/(m³/s)] of a flow above 0. */
  public static double specificFanPower(double powerW, double flowM3S) {
    return power(powerW) / Bounds.above("flow [m³/s]", flowM3S, 0);
  }

  /** Power P = SFP·q [W]. */
  public static double powerW(double specificFanPower, double flowM3S) {
    return Bounds.atLeast("specific fan power [W/(m³/s)]", specificFanPower, 0)
        * Bounds.atLeast("flow [m³/s]", flowM3S, 0);
  }

  /** Electricity W [kWh] over hours of running. */
  public static double electricityKwh(double powerW, double hours) {
    return power(powerW) * Bounds.atLeast("running time [h]", hours, 0) / 1000;
  }

  private static double power(double watt) {
    return Bounds.atLeast("power [W]", watt, 0);
  }
}
