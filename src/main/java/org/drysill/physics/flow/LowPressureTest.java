package org.drysill.physics.flow;

import org.drysill.physics.Bounds;

/**
 * Infiltration from the low pressure pulse test, Standard Assessment Procedure SAP 10 (memory).
 *
 * <pre>n = 0.263 · AP4^0.924</pre>
 *
 * <p>n infiltration before shelter and wind [1/h], AP4 air permeability at 4 Pa [m³/(h·m²)].
 */
public final class LowPressureTest {
  private LowPressureTest() {}

  /** Infiltration n [1/h] of an air permeability at 4 Pa of at least 0. */
  public static double airChangePerHour(double permeability4) {
    return 0.263
        * Math.pow(Bounds.atLeast("air permeability at 4 Pa [m³/(h·m²)]", permeability4, 0), 0.924);
  }
}
