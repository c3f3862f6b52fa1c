package org.drysill.physics.surface;

import org.drysill.physics.Bounds;
import org.drysill.physics.air.Iso13788Vapour;

/**
 * Water that settles on a cold impermeable surface, by the Lewis relation between heat and vapour
 * transfer (in the form used by Hens and by Künzel; memory).
 *
 * <pre>g = β · (pi − ps(Tsi)),  β = 7·10⁻⁹ · hc</pre>
 *
 * <p>g rate [kg/(m²·s)], β vapour transfer coefficient [kg/(m²·s·Pa)], hc convective heat transfer
 * coefficient [W/(m²·K)], pi vapour pressure of the room [Pa]. Derived at 10 °C the factor is
 * 7.07·10⁻⁹. Neither the warmth that condensing gives to the pane nor the drying of the room is in
 * it, so over a night it says about 25 to 30 % too much.
 */
public final class GlassCondensate {
  private static final double LEWIS = 7e-9;

  private GlassCondensate() {}

  /**
   * Rate g [kg/(m²·s)] at which water settles; 0 where the surface is above the dew point.
   *
   * @param vapourPressurePa pi [Pa]
   * @param surfaceCelsius Tsi [°C]
   * @param convectiveCoefficient hc [W/(m²·K)], at least 0
   */
  public static double rateKgM2S(
      double vapourPressurePa, double surfaceCelsius, double convectiveCoefficient) {
    Bounds.atLeast("vapour pressure [Pa]", vapourPressurePa, 0);
    double excess = vapourPressurePa - Iso13788Vapour.saturationPressurePa(surfaceCelsius);
    return transferCoefficient(convectiveCoefficient) * Math.max(0, excess);
  }

  /** β [kg/(m²·s·Pa)] of a convective coefficient hc [W/(m²·K)], at least 0. */
  public static double transferCoefficient(double convectiveCoefficient) {
    return LEWIS * Bounds.atLeast("convective coefficient [W/(m²·K)]", convectiveCoefficient, 0);
  }

  /**
   * Convective coefficient [W/(m²·K)] of a tall plane in still air, hc = 1.31·ΔT^⅓ (turbulent
   * natural convection, ASHRAE Handbook Fundamentals; memory).
   *
   * @param differenceK difference between air and surface [K], of either sign
   */
  public static double naturalConvection(double differenceK) {
    return 1.31 * Math.cbrt(Math.abs(Bounds.finite("temperature difference [K]", differenceK)));
  }
}
