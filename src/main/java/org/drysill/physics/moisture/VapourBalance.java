package org.drysill.physics.moisture;

import static org.drysill.physics.Temperature.toKelvin;

import java.util.OptionalDouble;
import org.drysill.physics.Bounds;
import org.drysill.physics.air.MoistAir;

/**
 * The steady vapour balance of a well-mixed room, ISO 13788:2012, Annex A (definition of the excess
 * Δv = G/(n·V); memory).
 *
 * <pre>
 * Δv = vi − ve = G / q          q = G / (vi,max − ve)          G = q · Δv
 * Δp = pi − pe = Δv · 461.5 · (Ti + Te) / 2    with Ti, Te in K (edition of 2001)
 * </pre>
 *
 * <p>v vapour content [kg/m³], G moisture production [kg/s], q flow of the air that leaves [m³/s],
 * p vapour pressure [Pa]. Each content is taken at its own side's temperature, so the widening of
 * warmed air is neglected: indoor content comes out too high by 7 to 7.5 % of ve for 0 °C outdoors
 * and 20 °C indoors, a required flow on the safe side, a production implied by readings too low.
 * {@link #steadyHumidityRatio} is exact in that respect. No buffering, no condensation.
 */
public final class VapourBalance {
  private VapourBalance() {}

  /** Excess Δv = G / q [kg/m³]. */
  public static double excessKgM3(double productionKgS, double flowM3S) {
    return checkedProduction(productionKgS) / Bounds.above("air flow [m³/s]", flowM3S, 0);
  }

  /** Production G = q·Δv [kg/s] that an excess of either sign implies; negative where it dries. */
  public static double productionKgS(double excessKgM3, double flowM3S) {
    return Bounds.finite("vapour excess [kg/m³]", excessKgM3)
        * Bounds.atLeast("air flow [m³/s]", flowM3S, 0);
  }

  /**
   * The flow q [m³/s] that keeps the indoor content at or below a ceiling.
   *
   * @return empty where the outdoor air is no drier than the ceiling: no flow suffices
   */
  public static OptionalDouble requiredFlowM3S(
      double productionKgS, double ceilingKgM3, double outdoorKgM3) {
    checkedProduction(productionKgS);
    checkedContent("ceiling of the vapour content [kg/m³]", ceilingKgM3);
    double room = ceilingKgM3 - checkedContent("outdoor vapour content [kg/m³]", outdoorKgM3);
    return room > 0 ? OptionalDouble.of(productionKgS / room) : OptionalDouble.empty();
  }

  /**
   * Vapour pressure excess Δp [Pa] of a content excess Δv [kg/m³] of either sign, at the mean of
   * the two temperatures (ISO 13788:2001).
   */
  public static double pressureExcessPa(
      double excessKgM3, double indoorCelsius, double outdoorCelsius) {
    return Bounds.finite("vapour excess [kg/m³]", excessKgM3)
        * MoistAir.VAPOUR_GAS_CONSTANT
        * meanKelvin(indoorCelsius, outdoorCelsius);
  }

  /** The inverse of {@link #pressureExcessPa}: Δv [kg/m³] of a Δp [Pa]. */
  public static double contentExcessKgM3(
      double excessPa, double indoorCelsius, double outdoorCelsius) {
    return Bounds.finite("vapour pressure excess [Pa]", excessPa)
        / (MoistAir.VAPOUR_GAS_CONSTANT * meanKelvin(indoorCelsius, outdoorCelsius));
  }

  /**
   * Indoor humidity ratio Wi = We + G / ṁ [kg/kg dry air], from the flow ṁ of dry air [kg/s], which
   * is the same going in and coming out.
   */
  public static double steadyHumidityRatio(
      double outdoorRatio, double productionKgS, double dryAirKgS) {
    return Bounds.atLeast("outdoor humidity ratio [kg/kg]", outdoorRatio, 0)
        + checkedProduction(productionKgS) / Bounds.above("dry air flow [kg/s]", dryAirKgS, 0);
  }

  private static double meanKelvin(double indoorCelsius, double outdoorCelsius) {
    return (checkedKelvin("indoor", indoorCelsius) + checkedKelvin("outdoor", outdoorCelsius)) / 2;
  }

  private static double checkedKelvin(String side, double celsius) {
    return toKelvin(Bounds.inside(side + " temperature [°C]", celsius, -100, 100));
  }

  private static double checkedProduction(double kgS) {
    return Bounds.atLeast("moisture production [kg/s]", kgS, 0);
  }

  private static double checkedContent(String name, double kgM3) {
    return Bounds.atLeast(name, kgM3, 0);
  }
}
