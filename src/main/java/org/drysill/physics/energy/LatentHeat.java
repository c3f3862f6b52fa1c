package org.drysill.physics.energy;

import org.drysill.physics.Bounds;

/**
 * Heat that water takes to evaporate and gives when it condenses: 2 501 000 − 2326·T [J/kg], T
 * temperature of the water from 0 to 60 °C; the difference of the enthalpies of vapour and water in
 * the ASHRAE Handbook Fundamentals (SI), chapter 1, equation 33 (memory).
 */
public final class LatentHeat {
  private LatentHeat() {}

  /** Latent heat [J/kg] at a water temperature from 0 to 60 °C. */
  public static double vaporisationJKg(double celsius) {
    return 2_501_000 - 2326 * Bounds.inside("temperature of the water [°C]", celsius, 0, 60);
  }
}
