package org.drysill.physics.energy;

import java.util.List;
import org.drysill.physics.Bounds;

/**
 * Heat that warms outdoor air, EN ISO 13789:2017 and EN ISO 52016-1 monthly (memory).
 *
 * <pre>
 * H = ρcp·q          Q = H·Σ max(0, Tb − Te,m)·24·dm / 1000
 * Q = H·DD·24 / 1000
 * </pre>
 *
 * <p>H heat loss coefficient [W/K], ρcp volumetric heat capacity of air [J/(m³·K)], q flow [m³/s],
 * Tb balance temperature above which gains suffice and Te,m mean outdoor temperature of month m
 * [°C], dm its days, DD degree-days [K·d], Q heat [kWh]. Months warmer than Tb count nothing, so
 * heat of cold days in such a month is missed: {@link DegreeDays} amends that.
 */
public final class VentilationHeat {
  /** Usual volumetric heat capacity of air, 0.34 Wh/(m³·K) [J/(m³·K)]; EN ISO 13789 (memory). */
  public static final double USUAL_CAPACITY_J_M3K = 1224;

  private VentilationHeat() {}

  /**
   * A month's outdoor temperature.
   *
   * @param meanCelsius mean [°C]
   * @param days number of days, above 0
   */
  public record Month(double meanCelsius, double days) {
    /** Refuses months without days. */
    public Month {
      Bounds.finite("mean temperature [°C]", meanCelsius);
      Bounds.above("days", days, 0);
    }
  }

  /** Heat loss coefficient H = ρcp·q [W/K]. */
  public static double lossCoefficientWK(double flowM3S, double capacityJM3K) {
    return Bounds.atLeast("flow [m³/s]", flowM3S, 0)
        * Bounds.above("heat capacity of air [J/(m³·K)]", capacityJM3K, 0);
  }

  /** Heat Q [kWh] over the months given, from their means. */
  public static double heatKwh(double lossWK, List<Month> months, double balanceCelsius) {
    Bounds.finite("balance temperature [°C]", balanceCelsius);
    double degreeDays =
        months.stream()
            .mapToDouble(m -> Math.max(0, balanceCelsius - m.meanCelsius()) * m.days())
            .sum();
    return heatKwh(lossWK, degreeDays);
  }

  /** Heat Q = H·DD·24/1000 [kWh] from degree-days [K·d]. */
  public static double heatKwh(double lossWK, double degreeDays) {
    return Bounds.atLeast("heat loss coefficient [W/K]", lossWK, 0)
        * Bounds.atLeast("degree-days [K·d]", degreeDays, 0)
        * 24
        / 1000;
  }
}
