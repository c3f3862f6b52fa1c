package org.drysill.physics.air;

import org.drysill.physics.Bounds;

/**
 * Air pressure by height above sea level in the standard atmosphere; ISO 2533:1975 in the form of
 * the ASHRAE Handbook Fundamentals (SI), chapter 1, equation 3 (memory).
 *
 * <pre>P = 101325 · (1 − 2.25577·10⁻⁵ · z)^5.2559</pre>
 *
 * <p>z height [m] from −500 to 5000, refused outside; P [Pa].
 */
public final class StandardAtmosphere {
  private StandardAtmosphere() {}

  /** Station pressure P [Pa] at a height above sea level [m]. */
  public static double pressurePa(double heightM) {
    Bounds.inside("height above sea level [m]", heightM, -500, 5000);
    return MoistAir.STANDARD_PRESSURE_PA * Math.pow(1 - 2.25577e-5 * heightM, 5.2559);
  }
}
