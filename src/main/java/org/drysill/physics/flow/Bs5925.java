package org.drysill.physics.flow;

import static org.drysill.physics.Temperature.toKelvin;

import org.drysill.physics.Bounds;

/**
 * Natural ventilation in simple cases, BS 5925:1991, Tables 8 and 9 (memory).
 *
 * <pre>
 * single side, wind              q = 0.025·A·U
 * single side, stack, one        q = Cd·(A/3)·√(|ΔT|·g·h / T̄)
 * single side, stack, two        q = Cd·(A1 + A2)·(ε·√2 / ((1 + ε)·√(1 + ε²)))·√(|ΔT|·g·H / T̄)
 * cross, wind                    q = Cd·Aw·U·√ΔCp
 * cross, stack                   q = Cd·Ab·√(2·|ΔT|·g·H / T̄)
 * wind at a height               U = U10·k·z^a
 * </pre>
 *
 * <p>q flow [m³/s]; A areas [m²], ε = A1/A2; U wind speed at the height of the building [m/s]; ΔT
 * indoor less outdoor temperature [K], T̄ their mean [K]; h height of an opening, H height between
 * two openings [m]; ΔCp difference of wind pressure coefficients [1].
 */
public final class Bs5925 {
  /** Standard gravity [m/s²]; ISO 80000-3. */
  public static final double GRAVITY = 9.80665;

  private static final double SINGLE_SIDED_WIND = 0.025;

  private Bs5925() {}

  /** Single-sided by wind: q = 0.025·A·U [m³/s]. */
  public static double singleSidedWindM3S(double areaM2, double windMs) {
    return SINGLE_SIDED_WIND * area(areaM2) * wind(windMs);
  }

  /** Single-sided by stack through one opening of a height [m³/s]. */
  public static double singleSidedStackM3S(
      Orifice opening, double heightM, double indoorCelsius, double outdoorCelsius) {
    return opening.discharge()
        * opening.areaM2()
        / 3
        * buoyancyMs(heightM, indoorCelsius, outdoorCelsius);
  }

  /** Single-sided by stack through two openings, one above the other, of one Cd [m³/s]. */
  public static double singleSidedStackM3S(
      double discharge,
      double area1M2,
      double area2M2,
      double heightBetweenM,
      double indoorCelsius,
      double outdoorCelsius) {
    double ratio =
        Bounds.above("first area [m²]", area1M2, 0) / Bounds.above("second area [m²]", area2M2, 0);
    double share = ratio * Math.sqrt(2) / ((1 + ratio) * Math.sqrt(1 + ratio * ratio));
    return new Orifice(discharge, area1M2 + area2M2).discharge()
        * (area1M2 + area2M2)
        * share
        * buoyancyMs(heightBetweenM, indoorCelsius, outdoorCelsius);
  }

  /** Cross ventilation by wind through openings in series [m³/s]. */
  public static double crossWindM3S(Orifice inSeries, double windMs, double pressureCoefficients) {
    return inSeries.discharge()
        * inSeries.areaM2()
        * wind(windMs)
        * Math.sqrt(Bounds.atLeast("difference of pressure coefficients", pressureCoefficients, 0));
  }

  /** Cross ventilation by stack through openings in series [m³/s]. */
  public static double crossStackM3S(
      Orifice inSeries, double heightBetweenM, double indoorCelsius, double outdoorCelsius) {
    return inSeries.discharge()
        * inSeries.areaM2()
        * Math.sqrt(2)
        * buoyancyMs(heightBetweenM, indoorCelsius, outdoorCelsius);
  }

  /** Area of two openings in series: 1/A² = 1/A1² + 1/A2² [m²]; 0 where one of them is shut. */
  public static double areaInSeriesM2(double firstM2, double secondM2) {
    double both = Math.hypot(area(firstM2), area(secondM2));
    return both == 0 ? 0 : firstM2 * (secondM2 / both);
  }

  /**
   * Wind speed U = U10·k·z^a [m/s] at a height.
   *
   * @param stationMs U10, speed at 10 m in open country [m/s]
   * @param terrainFactor k of the terrain
   * @param terrainExponent a of the terrain
   * @param heightM z, above 0 [m]
   */
  public static double windAtHeightMs(
      double stationMs, double terrainFactor, double terrainExponent, double heightM) {
    return wind(stationMs)
        * Bounds.above("terrain factor k", terrainFactor, 0)
        * Math.pow(
            Bounds.above("height [m]", heightM, 0),
            Bounds.atLeast("terrain exponent a", terrainExponent, 0));
  }

  private static double buoyancyMs(double heightM, double indoorCelsius, double outdoorCelsius) {
    Bounds.atLeast("height [m]", heightM, 0);
    Bounds.inside("indoor temperature [°C]", indoorCelsius, -100, 100);
    Bounds.inside("outdoor temperature [°C]", outdoorCelsius, -100, 100);
    double difference = Math.abs(indoorCelsius - outdoorCelsius);
    return Math.sqrt(
        difference * GRAVITY * heightM / toKelvin((indoorCelsius + outdoorCelsius) / 2));
  }

  private static double area(double m2) {
    return Bounds.atLeast("area [m²]", m2, 0);
  }

  private static double wind(double ms) {
    return Bounds.atLeast("wind speed [m/s]", ms, 0);
  }
}
