package org.drysill.physics.moisture;

import org.drysill.physics.Bounds;

/**
 * Vapour content of a well-mixed room in time, the first-order balance with constant production and
 * flow, its air and fabric lumped as one store.
 *
 * <pre>
 * M·V·dv/dt = G + q·(ve − v)
 * v(t) = v∞ + (v0 − v∞)·exp(−q·t / (M·V)),   v∞ = ve + G/q
 * </pre>
 *
 * <p>v vapour content [kg/m³], V volume [m³], G production [kg/s], q flow [m³/s], t time [s]. M
 * effective capacitance multiplier [1]: 1 for an empty hard room, about 5 to 15 furnished (memory).
 * Linear: vapour does not condense here, so v may pass saturation.
 *
 * @param volumeM3 V, above 0
 * @param flowM3S q, at least 0
 * @param capacitance M, at least 1
 */
public record TransientVapour(double volumeM3, double flowM3S, double capacitance) {
  /** Refuses what is no room. */
  public TransientVapour {
    Bounds.above("volume [m³]", volumeM3, 0);
    Bounds.atLeast("air flow [m³/s]", flowM3S, 0);
    Bounds.atLeast("effective capacitance multiplier", capacitance, 1);
  }

  /**
   * Vapour content [kg/m³] after a time. Without any flow it rises in a straight line, v0 +
   * G·t/(M·V).
   *
   * @param startKgM3 v0, content at the start
   * @param outdoorKgM3 ve
   * @param productionKgS G
   * @param seconds t, at least 0
   */
  public double contentKgM3(
      double startKgM3, double outdoorKgM3, double productionKgS, double seconds) {
    Bounds.atLeast("vapour content at the start [kg/m³]", startKgM3, 0);
    Bounds.atLeast("outdoor vapour content [kg/m³]", outdoorKgM3, 0);
    Bounds.atLeast("moisture production [kg/s]", productionKgS, 0);
    Bounds.atLeast("time [s]", seconds, 0);
    double store = capacitance * volumeM3;
    if (flowM3S == 0) {
      return startKgM3 + productionKgS * seconds / store;
    }
    // The same as v∞ + (v0 − v∞)·exp(−x), but without taking large numbers from each other where
    // the flow is small.
    double done = -Math.expm1(-flowM3S * seconds / store);
    return startKgM3 + (outdoorKgM3 - startKgM3) * done + productionKgS / flowM3S * done;
  }
}
