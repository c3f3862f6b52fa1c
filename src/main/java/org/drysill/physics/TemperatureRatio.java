package org.drysill.physics;

/**
 * Where a temperature lies between a cold and a warm one: the temperature factor of a surface, the
 * supply ratio of a heat recovery unit.
 *
 * <pre>r = (T − Tc) / (Tw − Tc)</pre>
 *
 * <p>T the temperature judged, Tc the cold and Tw the warm one, all [°C]; r [1]. 0 at the cold end,
 * 1 at the warm end, outside of both where T lies outside.
 */
public final class TemperatureRatio {
  /**
   * The smallest difference between warm and cold [K] for which a ratio is computed at all. What
   * difference is worth reporting is for the caller to say: with thermometers good for 0.5 K the
   * ratio is lost in their error long before this.
   */
  public static final double SMALLEST_DIFFERENCE_K = 0.5;

  private TemperatureRatio() {}

  /**
   * The ratio r.
   *
   * @throws IllegalArgumentException where warm and cold differ by less than {@value
   *     #SMALLEST_DIFFERENCE_K} K in either direction
   */
  public static double of(double judgedCelsius, double warmCelsius, double coldCelsius) {
    Bounds.finite("temperature judged [°C]", judgedCelsius);
    return (judgedCelsius - coldCelsius) / difference(warmCelsius, coldCelsius);
  }

  /**
   * The standard uncertainty of r by the law of propagation (JCGM 100:2008, GUM, clause 5.1.2) for
   * three independent readings.
   *
   * <pre>
   * ∂r/∂T = 1/D, ∂r/∂Tw = −r/D, ∂r/∂Tc = −(1 − r)/D with D = Tw − Tc
   * u(r) = (1/|D|) · √(u² + (r·uw)² + ((1 − r)·uc)²)
   * </pre>
   *
   * <p>An offset that all three readings share, as with one thermometer carried from place to place
   * or probes compared in one bath, cancels and does not belong into the three uncertainties.
   *
   * @param ratio r
   * @param differenceK D [K], of either sign but not within {@value #SMALLEST_DIFFERENCE_K} of 0
   * @param uJudgedK standard uncertainty u of T [K]
   * @param uWarmK standard uncertainty uw of Tw [K]
   * @param uColdK standard uncertainty uc of Tc [K]
   */
  public static double uncertainty(
      double ratio, double differenceK, double uJudgedK, double uWarmK, double uColdK) {
    Bounds.finite("ratio", ratio);
    Bounds.atLeast("uncertainty of the temperature judged [K]", uJudgedK, 0);
    Bounds.atLeast("uncertainty of the warm temperature [K]", uWarmK, 0);
    Bounds.atLeast("uncertainty of the cold temperature [K]", uColdK, 0);
    double warmPart = ratio * uWarmK;
    double coldPart = (1 - ratio) * uColdK;
    return Math.sqrt(uJudgedK * uJudgedK + warmPart * warmPart + coldPart * coldPart)
        / Math.abs(checked(differenceK));
  }

  /**
   * The difference between warm and cold [K] at which the uncertainty of r comes down to a target:
   * the inverse of {@link #uncertainty} in D.
   *
   * @param target the uncertainty wanted, above 0
   */
  public static double differenceForUncertainty(
      double ratio, double target, double uJudgedK, double uWarmK, double uColdK) {
    return uncertainty(ratio, 1, uJudgedK, uWarmK, uColdK)
        / Bounds.above("uncertainty wanted", target, 0);
  }

  private static double difference(double warmCelsius, double coldCelsius) {
    return checked(warmCelsius - coldCelsius);
  }

  private static double checked(double differenceK) {
    Bounds.finite("difference of warm and cold [K]", differenceK);
    Bounds.atLeast(
        "size of the difference of warm and cold [K]",
        Math.abs(differenceK),
        SMALLEST_DIFFERENCE_K);
    return differenceK;
  }
}
