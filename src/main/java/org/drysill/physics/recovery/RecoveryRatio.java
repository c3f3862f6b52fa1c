package org.drysill.physics.recovery;

import org.drysill.physics.Bounds;
import org.drysill.physics.TemperatureRatio;

/**
 * Temperature ratios of a heat recovery unit, EN 13141-7 and EN 13141-8 (memory; 11 extract, 12
 * exhaust, 21 outdoor, 22 supply air).
 *
 * <pre>
 * ηsu = (T22 − T21) / (T11 − T21)          ηex = (T11 − T12) / (T11 − T21)
 * ηex,P = (T11 − T12 + P / (q·ρ·cp)) / (T11 − T21)
 * </pre>
 *
 * <p>T temperatures [°C], P fan power that warms the air [W], q flow [m³/s], ρ·cp [J/(m³·K)]. The
 * supply ratio reads high where room heat leaks through the casing, the exhaust ratio where outdoor
 * air leaks into the exhaust: never mix the two. Refused where extract and outdoor air differ by
 * less than {@link TemperatureRatio#SMALLEST_DIFFERENCE_K}; the laboratory takes 13 K.
 */
public final class RecoveryRatio {
  private RecoveryRatio() {}

  /** Supply ratio ηsu [1]. */
  public static double supply(double extractCelsius, double outdoorCelsius, double supplyCelsius) {
    return TemperatureRatio.of(supplyCelsius, extractCelsius, outdoorCelsius);
  }

  /** Exhaust ratio ηex [1]. */
  public static double exhaust(
      double extractCelsius, double outdoorCelsius, double exhaustCelsius) {
    return 1 - TemperatureRatio.of(exhaustCelsius, extractCelsius, outdoorCelsius);
  }

  /** Exhaust ratio with the heat of the fans ηex,P [1], as passive-house practice reckons it. */
  public static double exhaustWithFanHeat(
      double extractCelsius,
      double outdoorCelsius,
      double exhaustCelsius,
      double fanWatt,
      double heatFlowWK) {
    double warming =
        Bounds.atLeast("fan power [W]", fanWatt, 0)
            / Bounds.above("heat capacity flow q·ρ·cp [W/K]", heatFlowWK, 0);
    return exhaust(extractCelsius, outdoorCelsius, exhaustCelsius - warming);
  }

  /**
   * Standard uncertainty of a supply ratio from independent thermometers, {@link
   * TemperatureRatio#uncertainty}. For the exhaust ratio swap indoor and outdoor uncertainty.
   *
   * @param differenceK extract less outdoor temperature [K]
   */
  public static double uncertainty(
      double ratio, double differenceK, double uSupplyK, double uExtractK, double uOutdoorK) {
    return TemperatureRatio.uncertainty(ratio, differenceK, uSupplyK, uExtractK, uOutdoorK);
  }

  /**
   * Share of the heat of all outdoor air that a unit with unequal flows recovers; what one stream
   * lacks comes in through cracks without recovery: η · min(qsu, qex) / max(qsu, qex). Derived.
   *
   * @param ratio η of the unit
   * @param supplyM3S qsu [m³/s], above 0
   * @param extractM3S qex [m³/s], above 0
   */
  public static double effectiveUnderUnbalance(double ratio, double supplyM3S, double extractM3S) {
    Bounds.finite("recovery ratio", ratio);
    Bounds.above("supply flow [m³/s]", supplyM3S, 0);
    Bounds.above("extract flow [m³/s]", extractM3S, 0);
    return ratio * Math.min(supplyM3S, extractM3S) / Math.max(supplyM3S, extractM3S);
  }
}
